import {
  type BidLines,
  costConventionsSchema,
  type InputTarget,
  type LineInput,
  type PriceLine,
  priceLinesSchema,
  type SharedDriver,
} from "#lib/cost";
import { type In, measured } from "#lib/quantity";
import type { Distribution } from "#lib/sampling";
import { type BidTerms, bidLines, conventionsText, workedTerms } from "../../checks/cost-example";

/** The three invented bids of the reference, for a field of 80,000 ft². */
export const conventions = costConventionsSchema.parse(conventionsText);
export const area = measured("area", 80_000, "ft²") as In<"m²">;
export const setting = { area, conventions };

export const linesOf = (terms: BidTerms): readonly PriceLine[] => priceLinesSchema.parse(bidLines(terms));

export const workedBids: readonly BidLines[] = (["a", "b", "c"] as const).map((bid) => ({
  bid,
  lines: linesOf(workedTerms[bid]),
}));

/** A price in dollars a square foot → cents a square metre. */
export const perSquareFoot = (dollars: number): number => measured("moneyPerArea", dollars, "$/ft²");
/** Hours, or dollars an hour, as the lines keep them. */
const hours = (value: number): number => measured("time", value, "h");
export const perHour = (dollars: number): number => measured("moneyPerTime", dollars, "$/h");

type Written = Readonly<{
  id: string;
  distribution: Distribution;
  base: number;
  target: InputTarget;
  driver?: SharedDriver;
}>;
export const lineInput = ({ driver, ...input }: Written): LineInput => ({
  ...input,
  label: input.id,
  driver: driver ?? null,
});

const scaled = (low: number, likely: number, high: number, unit: (value: number) => number) => ({
  low: unit(low),
  likely: unit(likely),
  high: unit(high),
});

const ofA = (line: string) => [{ bid: "a", line }];

/** The three uncertain inputs of the worked Bid A: carpet at its renewal, disposal, grooming hours. */
export const workedInputs: readonly LineInput[] = [
  lineInput({
    id: "carpet at renewal",
    distribution: { kind: "triangular", ...scaled(4.2, 4.85, 6, perSquareFoot) },
    base: perSquareFoot(4.85),
    target: { kind: "amount", of: ofA("carpet"), part: "renewal-price", move: { kind: "set" } },
  }),
  lineInput({
    id: "disposal",
    distribution: { kind: "pert", ...scaled(0.5, 0.85, 2, perSquareFoot) },
    base: perSquareFoot(0.85),
    target: { kind: "amount", of: ofA("carpet"), part: "removal-price", move: { kind: "set" } },
  }),
  lineInput({
    id: "grooming hours",
    distribution: { kind: "normal", mean: hours(110), deviation: hours(15) },
    base: hours(110),
    target: { kind: "amount", of: ofA("grooming"), part: "quantity", move: { kind: "set" } },
  }),
];
