import { type Generator, namedStream, quantileOf } from "#lib/sampling";
import { type Comparison, inContention } from "./model";
import { valueOnCurve } from "./value-on-curve";
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

/** Draws at once: few enough for their numbers to stay near the processor. */
export const mostAtOnce = 256;

/**
 * Draws weights and totals of the bids in contention. Every bid has its own stream under its own name, and the weights
 * have theirs, so that adding a bid leaves the draws of all others as they were.
 * @returns a function that draws so many more; what it gives back is overwritten by its next call
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
        const worthOf = valueOnCurve(value.curve);
        return [{ criterion, low: 0, width: 1, quantile: (chance) => worthOf(quantile(chance)) }];
      }),
      stream: namedStream(seed, `values/${bid}`),
    }),
  );
  const width = criteria.length;
  const weights = new Float64Array(mostAtOnce * width);
  const totals = new Float64Array(mostAtOnce * bids.length);
  const rows = Array.from({ length: mostAtOnce }, (_, at) => weights.subarray(at * width, (at + 1) * width));
  const adders = bids.map((bid, place) =>
    totalsOf(bid, width, (draw, total) => {
      totals[draw * bids.length + place] = total;
    }),
  );

  return (draws) => {
    if (draws > mostAtOnce) throw new RangeError(`at most ${mostAtOnce} draws at once, got ${draws}`);
    for (let at = 0; at < draws; at += 1) draw(weightStream, rows[at] as Float64Array);
    for (const add of adders) add(weights, draws);
    return { weights, totals };
  };
}

/** Prepares the totals of one bid for many draws; `put` takes each total. */
function totalsOf(
  { known, doubtful, stream }: Prepared,
  criteria: number,
  put: (draw: number, total: number) => void,
): (weights: Float64Array, draws: number) => void {
  const isPlain = doubtful.every(({ quantile }) => quantile === null);
  // where most values are in doubt, a draw for each is cheaper than looking up which ones are
  const isDense = isPlain && 2 * doubtful.length > criteria;
  const perDraw = isDense ? criteria : doubtful.length;
  const allBits = new Uint32Array(mostAtOnce * perDraw);
  const at = Int32Array.from(doubtful, ({ criterion }) => criterion);
  const quantiles = doubtful.map(({ quantile }) => quantile);
  const steps = new Float64Array(criteria);
  const starts = known.slice();
  for (const { criterion, width, quantile } of doubtful) {
    if (quantile !== null) continue;
    steps[criterion] = width * perWord;
    starts[criterion] = (starts[criterion] as number) + 0.5 * width * perWord;
  }

  const plainDoubt = (weights: Float64Array, row: number, from: number): number => {
    let total = 0;
    for (let doubt = 0; doubt < at.length; doubt += 1) {
      const criterion = at[doubt] as number;
      total += (weights[row + criterion] as number) * (steps[criterion] as number) * (allBits[from + doubt] as number);
    }
    return total;
  };
  const drawnDoubt = (weights: Float64Array, row: number, from: number): number => {
    let total = 0;
    for (const [doubt, quantile] of quantiles.entries()) {
      const criterion = at[doubt] as number;
      const word = allBits[from + doubt] as number;
      const value = quantile === null ? (steps[criterion] as number) * word : quantile((word + 0.5) * perWord);
      total += (weights[row + criterion] as number) * value;
    }
    return total;
  };
  const doubt = isPlain ? plainDoubt : drawnDoubt;

  return (weights, draws) => {
    stream.fillBits(draws === mostAtOnce ? allBits : allBits.subarray(0, draws * perDraw));
    if (isDense)
      for (let draw = 0; draw < draws; draw += 1)
        put(draw, denseTotal(weights, draw * criteria, starts, steps, allBits));
    else
      for (let draw = 0; draw < draws; draw += 1)
        put(draw, sparseTotal(weights, draw * criteria, starts) + doubt(weights, draw * criteria, draw * perDraw));
  };
}

// two sums side by side, as each addition waits for the one before

function sparseTotal(weights: Float64Array, row: number, starts: Float64Array): number {
  let [total, beside] = [0, 0];
  let criterion = 0;
  for (; criterion + 1 < starts.length; criterion += 2) {
    total += (weights[row + criterion] as number) * (starts[criterion] as number);
    beside += (weights[row + criterion + 1] as number) * (starts[criterion + 1] as number);
  }
  if (criterion < starts.length) total += (weights[row + criterion] as number) * (starts[criterion] as number);
  return total + beside;
}

function denseTotal(
  weights: Float64Array,
  row: number,
  starts: Float64Array,
  steps: Float64Array,
  bits: Uint32Array,
): number {
  let [total, beside] = [0, 0];
  let criterion = 0;
  for (; criterion + 1 < starts.length; criterion += 2) {
    const at = row + criterion;
    const value = (starts[criterion] as number) + (steps[criterion] as number) * (bits[at] as number);
    const next = (starts[criterion + 1] as number) + (steps[criterion + 1] as number) * (bits[at + 1] as number);
    total += (weights[at] as number) * value;
    beside += (weights[at + 1] as number) * next;
  }
  if (criterion < starts.length) {
    const value = (starts[criterion] as number) + (steps[criterion] as number) * (bits[row + criterion] as number);
    total += (weights[row + criterion] as number) * value;
  }
  return total + beside;
}
