import type { CostSetting } from "../cash-flows";
import { linkIds } from "../link-ids";
import { technicalLinks } from "../links/technical-links";
import type { Amount, PriceLine } from "../model";
import { costAt } from "./cost-at";
import { type BidLines, type LineInput, linesModel } from "./lines-model";
import type { StatedTarget } from "./stated-model";
import type { InputTarget } from "./targets";
import { type Bracket, type TiedValues, tiedValues, tieStart } from "./tied-values";
import { moveOf } from "./uncertain-inputs";

/** In what an input is told: a share of the figure as entered, whole years, or a rate a year. */
export type ExploredIn = "share" | "years" | "rate";

/** One input of two bids, and where the two cost the same in it, everything else as entered. */
export type ExploredTie = Readonly<{
  input: string;
  label: string;
  /** The bid whose line it is; null for what both share. */
  bid: string | null;
  toldIn: ExploredIn;
  /** The price that a share is a share of, where it is one that is written down; null elsewhere. */
  price: Amount | null;
  entered: number;
  tied: TiedValues;
  /** How far the nearest tie is from what is entered, as a share of the bracket; null where there is none in it. */
  distance: number | null;
}>;

type Explored = Readonly<{
  input: LineInput;
  bid: string | null;
  toldIn: ExploredIn;
  price: Amount | null;
  bracket: Bracket;
}>;

/** Where ties are looked for unless somebody says otherwise. @source common practice, no source */
export const tieBrackets = {
  share: { from: 0, to: 3 },
  years: { from: 1, to: 40 },
  realRate: { from: 0, to: 0.15 },
  growth: { from: -0.05, to: 0.1 },
} as const satisfies Record<string, Bracket>;

type Part = "price" | "renewal-price" | "removal-price";

const explored = (
  id: string,
  label: string,
  { target, base }: Readonly<{ target: InputTarget; base: number }>,
  told: Omit<Explored, "input">,
): Explored => ({
  input: { id, label, base, target, driver: null, distribution: { kind: "fixed", value: base } },
  ...told,
});

/** Prices, renewal, removal, life and growth of one line. */
function inputsOfLine(bid: string, line: PriceLine): readonly Explored[] {
  const of = [{ bid, line: line.id }];
  const own = (
    part: string,
    words: string,
    move: Parameters<typeof explored>[2],
    told: Omit<Explored, "input" | "bid">,
  ) => explored(`${bid} ${line.id} ${part}`, `${line.label}${words}`, move, { bid, ...told });
  const price = (part: Part, words: string, amount: Amount | null) =>
    own(
      part,
      words,
      { target: { kind: "amount", of, part, move: { kind: "in-proportion" } }, base: 1 },
      { toldIn: "share", price: amount, bracket: tieBrackets.share },
    );
  const growth = () =>
    own(
      "growth",
      ": growth a year",
      { target: { kind: "escalation", of }, base: line.kind === "at-base-date" ? 0 : (line.escalation?.value ?? 0) },
      { toldIn: "rate", price: null, bracket: tieBrackets.growth },
    );
  if (line.kind === "at-base-date") return [price("price", "", line.amount)];
  if (line.kind !== "replacement-chain") return [price("price", "", line.amount), growth()];
  const life = () =>
    own(
      "life",
      ": life",
      { target: { kind: "life", of }, base: line.life.years },
      { toldIn: "years", price: null, bracket: tieBrackets.years },
    );
  return [
    price("price", "", line.amount),
    price("renewal-price", ": renewals", null),
    ...(line.removal === null ? [] : [price("removal-price", ": removal", line.removal)]),
    ...(line.reuse === null ? [life()] : []),
    growth(),
  ];
}

/** What lines of both bids share: what they are spent on, as a wage or a price of rubber would move it. */
const shared: readonly Readonly<{ id: string; label: string; target: StatedTarget }>[] = [
  { id: "all-parts", label: "Every part with a life", target: { kind: "parts", part: "price" } },
  { id: "all-removals", label: "Every removal of a part", target: { kind: "parts", part: "removal-price" } },
  ...linkIds.map((purpose) => ({
    id: `spent-on-${purpose}`,
    label: technicalLinks[purpose].label,
    target: { kind: "purpose", purpose } as const,
  })),
];

function sharedInputs(bids: readonly BidLines[], realRate: number): readonly Explored[] {
  return shared.flatMap(({ id, label, target }) => {
    const move = moveOf(target, bids, realRate);
    if (move?.target.kind !== "amount") return [];
    const { of } = move.target;
    if (!bids.every(({ bid }) => of.some((ref) => ref.bid === bid))) return [];
    return [explored(id, label, move, { bid: null, toldIn: "share", price: null, bracket: tieBrackets.share })];
  });
}

/** Everything that is entered of two bids, and the real rate they share. */
function exploredInputs(bids: readonly BidLines[], realRate: number): readonly Explored[] {
  return [
    explored(
      "real-rate",
      "Real rate",
      { target: { kind: "real-rate" }, base: realRate },
      { bid: null, toldIn: "rate", price: null, bracket: tieBrackets.realRate },
    ),
    ...sharedInputs(bids, realRate),
    ...bids.flatMap(({ bid, lines }) => lines.flatMap((line) => inputsOfLine(bid, line))),
  ];
}

function tieOf(
  [first, second]: readonly [BidLines, BidLines],
  { input, bracket, ...told }: Explored,
  setting: CostSetting,
): ExploredTie {
  const model = linesModel([first, second], [input], setting);
  const question = { first: first.bid, second: second.bid, input: input.id, ...bracket };
  const tied = tiedValues(model, question);
  const { value: entered } = tieStart(model, question);
  const { bid, toldIn, price } = told;
  return {
    input: input.id,
    label: input.label,
    bid,
    toldIn,
    price,
    entered,
    tied,
    distance: distanceOf(tied, entered),
  };
}

/**
 * What would have to change for two bids to cost the same, one input at a time and everything else as entered; those
 * that tie nearest to what is entered come first, those that never tie within their bracket last.
 */
export function exploredTies(first: BidLines, second: BidLines, setting: CostSetting): readonly ExploredTie[] {
  return exploredInputs([first, second], setting.conventions.realRate.value)
    .map((one) => tieOf([first, second], one, setting))
    .toSorted((one, other) => (one.distance ?? 2) - (other.distance ?? 2));
}

/** The same input looked at between other values. @throws RangeError if the bids have no such input */
export function tieWithin(
  first: BidLines,
  second: BidLines,
  { input, ...bracket }: Bracket & Readonly<{ input: string }>,
  setting: CostSetting,
): ExploredTie {
  return tieOf([first, second], { ...inputNamed([first, second], input, setting), bracket }, setting);
}

function inputNamed(bids: readonly BidLines[], input: string, { conventions }: CostSetting): Explored {
  const found = exploredInputs(bids, conventions.realRate.value).find((one) => one.input.id === input);
  if (found === undefined) throw new RangeError(`no input ${input} in these bids`);
  return found;
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
  { input, tied, toldIn }: ExploredTie,
  setting: CostSetting,
): readonly Readonly<{ value: number; first: number; second: number }>[] {
  const bids = [first, second];
  const model = linesModel(bids, [inputNamed(bids, input, setting).input], setting);
  const steps = toldIn === "years" ? tied.to - tied.from : 48;
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
