import type { BidEvaluation } from "#lib/evaluation";
import type { ChanceBound, ChanceOutlook } from "#lib/impact";

/** A bid of which chances can be given, or bounds of them. */
export type ChanceLine = Readonly<{
  letter: string;
  bidder: string;
  index: number;
  outlook: Extract<ChanceOutlook, { kind: "chances" }>;
  /** How all its levels are stated where the chances are bounds; null where they are chances. */
  stated: ChanceBound["stated"] | null;
  assumptions: readonly string[];
}>;

/** The bids with chances or bounds of them, each with its place among all. */
export const chanceLines = (bids: readonly Readonly<{ bid: BidEvaluation; index: number }>[]): readonly ChanceLine[] =>
  bids.flatMap(({ bid: { letter, bidder, hardness }, index }) => {
    const { outlook: itself, bound, assumptions } = hardness.chances;
    const outlook = bound?.outlook ?? itself;
    return outlook.kind === "chances"
      ? [{ letter, bidder, index, outlook, stated: bound?.stated ?? null, assumptions }]
      : [];
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

/** The chance that a limit from above is kept, where levels at their bounds give `chance`: rounded to the safe side. */
export function boundText(chance: number, stated: ChanceLine["stated"]): string {
  switch (stated) {
    case null:
      return chanceText(chance);
    case "at-most":
      return chance > 0.99 ? chanceText(chance) : `at least ${Math.floor(chance * 100)} %`;
    case "at-least":
      return chance < 0.01 ? chanceText(chance) : `at most ${Math.ceil(chance * 100)} %`;
  }
}
