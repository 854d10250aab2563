import { impactSpeed } from "#lib/claim";
import { type In, measured } from "#lib/quantity";

/** Conventional standard gravity, m/s². @source NIST SP 811 (2008), exact by convention */
const gravity = 9.80665;

/** More than any turf system with its shock layer is thick; what the missile sinks in adds to its fall. In m. */
const mostTravel = 0.1;

/** Of the most pointed pulse that rises and falls without a hollow: criterion = this × level^2.5 × duration. */
const trianglePulse = (4 / 7) * (5 / 7) ** 2.5;

/**
 * The highest head injury criterion that a peak level allows after a free fall, whatever the shape of the pulse.
 * In any stretch of time τ the mean deceleration is at most the peak A, and what it takes from the speed is at most the
 * speed before and, upwards, after the impact: I = ∫ a dt ≤ min(A·τ, 2v/g + τ). The criterion I^2.5/τ^1.5 is greatest
 * where both bounds meet, at τ = (2v/g)/(A − 1): A^2.5·(2v/g)/(A − 1). The speed includes 0.1 m of sinking in.
 * @param level peak deceleration above 2 g; below that the bound says nothing and is open
 * @source derived from the definition of the criterion and conservation of momentum and energy
 */
export function largestCriterion(level: In<"g">, height: In<"m">): number {
  if (!(level > 2)) return Number.POSITIVE_INFINITY;
  const seconds = (2 * impactSpeed(measured("length", height + mostTravel))) / gravity;
  return level ** 2.5 * (seconds / (level - 1));
}

/**
 * The lowest head injury criterion that goes with a peak level after a free fall that does not bounce, for a pulse with
 * one hump and no hollow. Of all those with one peak and one area the triangle gives the least: its area is A·T/2 = v/g,
 * so that the criterion is 0.4928·A^1.5·v/g. A real pulse with a spike on a long low foot may stay below it.
 * @source derived from the definition of the criterion and conservation of momentum
 */
export function usualLeastCriterion(level: In<"g">, height: In<"m">): number {
  if (!(level > 0)) return 0;
  const duration = (2 * impactSpeed(height)) / (gravity * level);
  return trianglePulse * level ** 2.5 * duration;
}
