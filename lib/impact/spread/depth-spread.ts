import jStat from "jstat";
import { type In, type Interval, measured } from "#lib/quantity";
import type { Grooming } from "./grooming";

/** What lies on top decides how easily feet and water carry it about. */
export type InfillClass = "mostly-mineral" | "mostly-light";

/** Standard deviation of the local depth loss over one field: at best, likely, at worst. */
export type DepthDeviation = Readonly<{ low: In<"m">; likely: In<"m">; high: In<"m"> }>;

const inches = (low: number, likely: number, high: number): DepthDeviation => ({
  low: measured("length", low, "in"),
  likely: measured("length", likely, "in"),
  high: measured("length", high, "in"),
});

/**
 * What to start from until the owner sets a deviation or a field has been measured.
 * @source owner's assumption to start from; no published figure
 */
export const depthDeviations: Readonly<Record<InfillClass, Readonly<Record<Grooming, DepthDeviation>>>> = {
  "mostly-mineral": { "every-month": inches(0.06, 0.1, 0.15), "less-often": inches(0.1, 0.15, 0.25) },
  "mostly-light": { "every-month": inches(0.1, 0.15, 0.25), "less-often": inches(0.15, 0.25, 0.4) },
};

/** Half the mass decides; where the share can't be told, the infill counts as the one that moves more. */
export const infillClass = (mineralShare: Interval<"1"> | null): InfillClass =>
  mineralShare !== null && mineralShare.low >= 0.5 ? "mostly-mineral" : "mostly-light";

/** What a grid of measured depths says of the spread. */
export type MeasuredDepths = Readonly<
  | {
      kind: "measured";
      count: number;
      mean: In<"m">;
      deviation: In<"m">;
      /** Where the deviation lies with the chance asked for. */
      range: Interval<"m">;
    }
  | { kind: "not-enough"; count: number; reason: string }
>;

const depthsNeeded = 5;

/**
 * Spread of infill depth from a measured grid.
 * @param chance that the range holds the deviation, both sides together
 * @source χ² interval of a standard deviation, NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.3.1; for depths
 * that are about normal
 */
export function depthSpread(depths: readonly In<"m">[], chance: number): MeasuredDepths {
  const count = depths.length;
  if (count < depthsNeeded) {
    const reason = `The spread of the depth needs at least ${depthsNeeded} measured spots, there are ${count}.`;
    return { kind: "not-enough", count, reason };
  }
  const mean = depths.reduce((total, depth) => total + depth, 0) / count;
  const squares = depths.reduce((total, depth) => total + (depth - mean) ** 2, 0);
  const end = (share: number) => measured("length", Math.sqrt(squares / jStat.chisquare.inv(share, count - 1)));
  return {
    kind: "measured",
    count,
    mean: measured("length", mean),
    deviation: measured("length", Math.sqrt(squares / (count - 1))),
    range: { low: end((1 + chance) / 2), high: end((1 - chance) / 2) },
  };
}
