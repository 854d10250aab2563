import { type In, measured } from "#lib/quantity";

/** Three drops on one spot, in the order they were made. */
export type Drops = readonly [first: In<"g">, second: In<"g">, third: In<"g">];

/**
 * The level of one location: the mean of drops 2 and 3. The first drop only settles the spot.
 * @source ASTM F355/F1936 practice as described by Penn State sports-surface research
 */
export const testReduction = ([, second, third]: Drops): In<"g"> => measured("impactLevel", (second + third) / 2);

/** Whether a level meets a limit: strictly below it. @source ASTM F1936 as quoted in ASTM work item WK38153 (below 200) */
const meetsLimit = (level: In<"g">, limit: In<"g">): boolean => level < limit;

export type LocationsVerdict = Readonly<
  | { kind: "every-location-meets" }
  /** Indexes of the locations at or above the limit, in the order given. */
  | { kind: "locations-at-or-above"; locations: readonly number[] }
  | { kind: "no-locations" }
>;

/**
 * Holds each location against the limit; a mean over the field never makes up for one of them.
 * @source limit at each location: from memory of ASTM F1936
 */
export function everyLocationMeets(levels: readonly In<"g">[], limit: In<"g">): LocationsVerdict {
  if (levels.length === 0) return { kind: "no-locations" };
  const locations = levels.flatMap((level, index) => (meetsLimit(level, limit) ? [] : [index]));
  return locations.length === 0 ? { kind: "every-location-meets" } : { kind: "locations-at-or-above", locations };
}
