import { type Generator, namedStream, quantileOf } from "#lib/sampling";
import { type Comparison, inContention } from "./model";
import { type WeightChoice, weightDraw } from "./weight-choice";

/** Weights and totals of some draws, row by row: `weights[draw × criteria + criterion]`, `totals[draw × bids + bid]`. */
export type DrawnTotals = Readonly<{ weights: Float64Array; totals: Float64Array }>;

/** A value that differs from draw to draw: where it stands, its low end and width, and its quantile where it has one. */
type Doubtful = Readonly<{
  criterion: number;
  low: number;
  width: number;
  quantile: ((chance: number) => number) | null;
}>;

/** One bid ready for drawing: what is known for certain, what is not, and a stream of its own. */
type Prepared = Readonly<{ known: Float64Array; doubtful: readonly Doubtful[]; stream: Generator }>;

const perWord = 2 ** -32;

/**
 * Draws weights and totals of the bids in contention. Every bid has its own stream under its own name, and the weights
 * have theirs, so that adding a bid leaves the draws of all others as they were.
 * @returns a function that draws so many more
 */
export function drawnTotals(
  comparison: Comparison,
  choice: WeightChoice,
  seed: number,
): (draws: number) => DrawnTotals {
  const { criteria, shares } = comparison;
  const draw = weightDraw(choice, shares);
  const weightStream = namedStream(seed, `weights/${choice.kind}`);
  const bids = inContention(comparison).map(
    ({ bid, values }): Prepared => ({
      known: Float64Array.from(values, (value) =>
        value.kind === "known" ? value.value : value.kind === "between" ? value.low : 0,
      ),
      doubtful: values.flatMap((value, criterion): readonly Doubtful[] => {
        if (value.kind === "known" || shares[criterion] === 0) return [];
        if (value.kind === "between")
          return [{ criterion, low: value.low, width: value.high - value.low, quantile: null }];
        const quantile = quantileOf(value.distribution);
        return [{ criterion, low: 0, width: 1, quantile: (chance) => value.valueOf(quantile(chance)) }];
      }),
      stream: namedStream(seed, `values/${bid}`),
    }),
  );
  const width = criteria.length;

  return (draws) => {
    const weights = new Float64Array(draws * width);
    for (let at = 0; at < draws; at += 1) draw(weightStream, weights.subarray(at * width, (at + 1) * width));
    const totals = new Float64Array(draws * bids.length);
    for (const [place, bid] of bids.entries()) addTotals(bid, { weights, totals }, draws, width, bids.length, place);
    return { weights, totals };
  };
}

function addTotals(
  { known, doubtful, stream }: Prepared,
  { weights, totals }: DrawnTotals,
  draws: number,
  criteria: number,
  bids: number,
  place: number,
): void {
  const bits = new Uint32Array(draws * doubtful.length);
  stream.fillBits(bits);
  const at = Int32Array.from(doubtful, ({ criterion }) => criterion);
  const widths = Float64Array.from(doubtful, ({ width }) => width * perWord);
  const count = at.length;
  const isPlain = doubtful.every(({ quantile }) => quantile === null);
  for (let draw = 0; draw < draws; draw += 1) {
    const row = draw * criteria;
    // two sums side by side, as each addition waits for the one before
    let [total, beside] = [0, 0];
    let criterion = 0;
    for (; criterion + 1 < criteria; criterion += 2) {
      total += (weights[row + criterion] as number) * (known[criterion] as number);
      beside += (weights[row + criterion + 1] as number) * (known[criterion + 1] as number);
    }
    if (criterion < criteria) total += (weights[row + criterion] as number) * (known[criterion] as number);
    const from = draw * count;
    if (isPlain)
      for (let doubt = 0; doubt < count; doubt += 1) {
        const moved = (widths[doubt] as number) * ((bits[from + doubt] as number) + 0.5);
        beside += (weights[row + (at[doubt] as number)] as number) * moved;
      }
    else
      for (let doubt = 0; doubt < count; doubt += 1) {
        const chance = ((bits[from + doubt] as number) + 0.5) * perWord;
        const { quantile, width } = doubtful[doubt] as Doubtful;
        total +=
          (weights[row + (at[doubt] as number)] as number) * (quantile === null ? width * chance : quantile(chance));
      }
    totals[draw * bids + place] = total + beside;
  }
}
