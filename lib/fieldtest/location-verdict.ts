import { meetsLimit } from "#lib/impact";
import { type In, measured } from "#lib/quantity";

/** How a level stands to its limit, with the measuring uncertainty in view. In falling order. */
export const locationVerdicts = {
  meets: "meets",
  "meets-within-uncertainty": "meets, but within the measuring uncertainty",
  "does-not-meet-within-uncertainty": "does not meet, but within the measuring uncertainty",
  "does-not-meet": "does not meet",
} as const;
export type LocationVerdict = keyof typeof locationVerdicts;

/**
 * Whether a level lies below its limit, and whether the guard band leaves room for the other answer.
 * @param guardBand one-sided; 0 where the uncertainty is not known
 * @source decision with guard band as in JCGM 106:2012, from memory; strictly below the limit as `meetsLimit` says
 */
export function locationVerdict(level: In<"g">, limit: In<"g">, guardBand: In<"g">): LocationVerdict {
  const moved = (by: number) => measured("impactLevel", level + by);
  if (meetsLimit(moved(guardBand), limit)) return "meets";
  if (meetsLimit(level, limit)) return "meets-within-uncertainty";
  return meetsLimit(moved(-guardBand), limit) ? "does-not-meet-within-uncertainty" : "does-not-meet";
}

const inOrder = Object.keys(locationVerdicts) as readonly LocationVerdict[];

/** The verdict on a field: that of its worst location. A mean over the field never makes up for one location. */
export const fieldVerdict = (verdicts: readonly LocationVerdict[]): LocationVerdict | "nothing-tested" =>
  inOrder.findLast((verdict) => verdicts.includes(verdict)) ?? "nothing-tested";
