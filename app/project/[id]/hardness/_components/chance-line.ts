import type { BidEvaluation } from "#lib/evaluation";
import type { ChanceOutlook } from "#lib/impact";

/** A bid of which chances can be given. */
export type ChanceLine = Readonly<{
  letter: string;
  bidder: string;
  index: number;
  outlook: Extract<ChanceOutlook, { kind: "chances" }>;
  assumptions: readonly string[];
}>;

/** The bids with chances, each with its place among all. */
export const chanceLines = (bids: readonly Readonly<{ bid: BidEvaluation; index: number }>[]): readonly ChanceLine[] =>
  bids.flatMap(({ bid: { letter, bidder, hardness }, index }) => {
    const { outlook, assumptions } = hardness.chances;
    return outlook.kind === "chances" ? [{ letter, bidder, index, outlook, assumptions }] : [];
  });

/** Those whose chances are of all spots: a chance of the field as a whole never shares an axis with one of them. */
export const overAllSpots = <Line extends Pick<ChanceLine, "outlook">>(lines: readonly Line[]): readonly Line[] =>
  lines.filter(({ outlook }) => outlook.years.every(({ locations }) => locations !== null));

/** A chance as a share in percent; never none or all, which no chance worked out from few results is. */
export function chanceText(chance: number): string {
  if (chance < 0.01) return "under 1 %";
  if (chance > 0.99) return "over 99 %";
  return `${Math.round(chance * 100)} %`;
}
