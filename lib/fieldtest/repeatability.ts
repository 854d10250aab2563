import { studentFactor } from "#lib/impact";
import { type In, measured } from "#lib/quantity";
import type { Drops } from "./location-level";

/** How far single drops on one spot scatter, as a standard deviation, and how well that is known. */
export type Repeatability = Readonly<{
  deviation: In<"g">;
  /** Infinite for a figure that is taken as given. */
  degreesOfFreedom: number;
  basis: "stated" | "pooled-from-drops";
}>;

/** Fewest locations from which a repeatability is pooled. */
const fewestLocations = 4;

/**
 * Repeatability of a single drop from the differences between drops 2 and 3 of several locations. What all locations
 * share, a third drop that is a little harder than the second, is no scatter and is taken out. Null for too few locations.
 * @source derived: the variance of a difference of two drops is twice that of one; pooling as in ISO 5725-2, from memory
 */
export function pooledRepeatability(locations: readonly Drops[]): Repeatability | null {
  const count = locations.length;
  if (count < fewestLocations) return null;
  const differences = locations.map(([, second, third]) => third - second);
  const shared = differences.reduce((sum, difference) => sum + difference, 0) / count;
  const squares = differences.reduce((sum, difference) => sum + (difference - shared) ** 2, 0);
  return {
    deviation: measured("impactLevel", Math.sqrt(squares / (count - 1) / 2)),
    degreesOfFreedom: count - 1,
    basis: "pooled-from-drops",
  };
}

/** A repeatability that a laboratory or a method states. */
export const statedRepeatability = (deviation: In<"g">): Repeatability => ({
  deviation,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
  basis: "stated",
});

/** Uncertainty of the mean of two drops. */
export type LocationUncertainty = Readonly<{
  /** Standard uncertainty. */
  standard: In<"g">;
  /** How far the true level may lie beyond the mean on one side, with a chance of 95 % not to lie farther. */
  guardBand: In<"g">;
  /** How far it may lie on either side, with 95 % for both together. */
  eitherSide: In<"g">;
}>;

/** Degrees of freedom above which Student's factor no longer changes in the digits shown. */
const asGoodAsInfinite = 1e6;

/**
 * Uncertainty of a location's level by repeatability, and by the equipment where its standard uncertainty is stated.
 * @source combination and effective degrees of freedom as in JCGM 100:2008 (4.1, G.4); one-sided 95 % as in JCGM 106:2012
 */
export function locationUncertainty(
  { deviation, degreesOfFreedom }: Repeatability,
  equipment: In<"g"> = measured("impactLevel", 0),
): LocationUncertainty {
  const byDrops = deviation / Math.SQRT2;
  const standard = Math.hypot(byDrops, equipment);
  const effective = byDrops === 0 ? asGoodAsInfinite : degreesOfFreedom * (standard / byDrops) ** 4;
  const degrees = Math.min(effective, asGoodAsInfinite);
  return {
    standard: measured("impactLevel", standard),
    guardBand: measured("impactLevel", studentFactor(0.9, degrees) * standard),
    eitherSide: measured("impactLevel", studentFactor(0.95, degrees) * standard),
  };
}
