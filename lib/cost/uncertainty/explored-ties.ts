import type { CostSetting } from "../cash-flows";
import type { PriceLine } from "../model";
import { costAt } from "./cost-at";
import { type BidLines, type LineInput, linesModel } from "./lines-model";
import { type TiedValues, tiedValues, tieStart } from "./tied-values";

/** In what an input is told: a share of the figure as entered, whole years, or a rate a year. */
export type ExploredIn = "share" | "years" | "rate";

/** One input of two bids, and where the two cost the same in it, everything else as entered. */
export type ExploredTie = Readonly<{
  input: string;
  label: string;
  /** The bid whose line it is; null for what all bids share. */
  bid: string | null;
  toldIn: ExploredIn;
  entered: number;
  tied: TiedValues;
  /** How far the nearest tie is from what is entered, as a share of the bracket; null where there is none in it. */
  distance: number | null;
}>;

type Explored = Readonly<{ input: LineInput; bid: string | null; toldIn: ExploredIn }>;

/** Where ties are looked for: prices from nothing to three times the entered one, lives to 40 years, rates to 15 %. */
const brackets = {
  share: { from: 0, to: 3 },
  years: { from: 1, to: 40 },
  rate: { from: 0, to: 0.15 },
} as const satisfies Record<ExploredIn, unknown>;

/** Every price, renewal, removal and life of the two bids, and the real rate they share. */
function exploredInputs(bids: readonly BidLines[], realRate: number): readonly Explored[] {
  const ofLine = (bid: string, line: PriceLine): readonly Explored[] => {
    const of = [{ bid, line: line.id }];
    const input = (part: string, label: string, base: number, target: LineInput["target"]): LineInput => ({
      ...{ id: `${bid} ${line.id} ${part}`, label: `${line.label}${label}`, base, target, driver: null },
      distribution: { kind: "fixed", value: base },
    });
    const price = (part: "price" | "renewal-price" | "removal-price", label: string): Explored => ({
      input: input(part, label, 1, { kind: "amount", of, part, move: { kind: "in-proportion" } }),
      ...{ bid, toldIn: "share" },
    });
    if (line.kind !== "replacement-chain") return [price("price", "")];
    return [
      price("price", ""),
      price("renewal-price", ": renewals"),
      ...(line.removal === null ? [] : [price("removal-price", ": removal")]),
      ...(line.reuse === null
        ? [{ input: input("life", ": life", line.life.years, { kind: "life", of }), bid, toldIn: "years" } as const]
        : []),
    ];
  };
  const rate: LineInput = {
    ...{ id: "real-rate", label: "Real rate", base: realRate, target: { kind: "real-rate" }, driver: null },
    distribution: { kind: "fixed", value: realRate },
  };
  return [
    { input: rate, bid: null, toldIn: "rate" },
    ...bids.flatMap(({ bid, lines }) => lines.flatMap((line) => ofLine(bid, line))),
  ];
}

/**
 * What would have to change for two bids to cost the same, one input at a time and everything else as entered; those
 * that tie nearest to what is entered come first, those that never tie within their bracket last.
 */
export function exploredTies(first: BidLines, second: BidLines, setting: CostSetting): readonly ExploredTie[] {
  const bids = [first, second];
  return exploredInputs(bids, setting.conventions.realRate.value)
    .map(({ input, bid, toldIn }): ExploredTie => {
      const model = linesModel(bids, [input], setting);
      const question = { first: first.bid, second: second.bid, input: input.id, ...brackets[toldIn] };
      const tied = tiedValues(model, question);
      const { value: entered } = tieStart(model, question);
      return { input: input.id, label: input.label, bid, toldIn, entered, tied, distance: distanceOf(tied, entered) };
    })
    .toSorted((one, other) => (one.distance ?? 2) - (other.distance ?? 2));
}

function distanceOf(tied: TiedValues, entered: number): number | null {
  const width = tied.to - tied.from;
  const nearest = (values: readonly number[]) =>
    values.length === 0 ? null : Math.min(...values.map((value) => Math.abs(value - entered))) / width;
  switch (tied.kind) {
    case "always-equal":
      return 0;
    case "line":
      return tied.inside && tied.at !== null ? nearest([tied.at]) : null;
    case "crossings":
      return nearest(tied.at);
    case "steps":
      return nearest(tied.between.map(([before]) => before));
  }
}

/** What two bids cost along one input, for a drawing. Cents at the base date, everything else as entered. */
export function costsAlong(
  first: BidLines,
  second: BidLines,
  { input, tied }: ExploredTie,
  setting: CostSetting,
): readonly Readonly<{ value: number; first: number; second: number }>[] {
  const bids = [first, second];
  const explored = exploredInputs(bids, setting.conventions.realRate.value).find((one) => one.input.id === input);
  if (explored === undefined) throw new RangeError(`no input ${input} in these bids`);
  const model = linesModel(bids, [explored.input], setting);
  const steps = explored.toldIn === "years" ? tied.to - tied.from : 48;
  const cost = (at: number, value: number) => {
    const bid = model.bids[at];
    if (bid === undefined) throw new RangeError("two bids make a comparison");
    return costAt(model, bid, Float64Array.of(value));
  };
  return Array.from({ length: steps + 1 }, (_, step) => {
    const value = tied.from + ((tied.to - tied.from) * step) / steps;
    return { value, first: cost(0, value), second: cost(1, value) };
  });
}
