import { type In, measured } from "#lib/quantity";
import type { TestLocation } from "./model";

/** Three drops on one spot, in the order they were made. */
export type Drops = readonly [first: In<"g">, second: In<"g">, third: In<"g">];

/**
 * The level of one location: the mean of drops 2 and 3. The first drop only settles the spot.
 * @source ASTM F355/F1936 practice as described by Penn State sports-surface research
 */
export const locationLevel = ([, second, third]: Drops): In<"g"> => measured("impactLevel", (second + third) / 2);

/** The three drops of a location; null where one of them is missing. */
export function dropsOf({ drops: [first, second, third] }: TestLocation): Drops | null {
  return first === null || second === null || third === null ? null : [first.value, second.value, third.value];
}
