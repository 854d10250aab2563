import { type Figure, intervalOfFigure } from "#lib/figure";
import { measured } from "#lib/quantity";

/** Above this total a layered sand and rubber infill is called heavy; all-rubber infill usually lies in the band. */
export const usualInfillMass = {
  heavyAbove: measured("arealDensity", 9, "lb/ft²"),
  allRubber: { low: measured("arealDensity", 2.25, "lb/ft²"), high: measured("arealDensity", 3.75, "lb/ft²") },
  source: "common practice, no source",
} as const;

export type WeightClass = "heavy" | "not-heavy" | "may-be-heavy" | "unknown";

/** Whether a total mass per area is what the trade calls heavy. A description, not a judgement. */
export function weightClass(total: Figure<"arealDensity">): WeightClass {
  const interval = intervalOfFigure(total);
  if (interval === null) return "unknown";
  if (interval.low > usualInfillMass.heavyAbove) return "heavy";
  return interval.high > usualInfillMass.heavyAbove ? "may-be-heavy" : "not-heavy";
}
