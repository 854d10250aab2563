import type { Place } from "#lib/field";
import type { MeasuredPlace } from "./inverse-distance";
import { decomposed } from "./linear-system";
import { distanceBetween } from "./places";
import { semivarianceAt, type Variogram } from "./variogram";

/** A value between measured ones and its standard error, both in the unit of the map. */
export type KrigedValue = Readonly<{ value: number; standardError: number }>;

/**
 * Ordinary kriging: the weighted mean of the measured values with the least expected squared error, for a mean that is
 * not known. Null where two points coincide or the variogram is flat at zero.
 * @source Webster and Oliver, Geostatistics for Environmental Scientists, chapter 8, from memory
 */
export function ordinaryKriging(
  points: readonly MeasuredPlace[],
  variogram: Variogram,
): ((at: Place) => KrigedValue) | null {
  const between = (one: Place, other: Place) => semivarianceAt(variogram, distanceBetween(one, other));
  const matrix = [
    ...points.map((one) => [...points.map((other) => between(one.place, other.place)), 1]),
    [...points.map(() => 1), 0],
  ];
  const solve = decomposed(matrix);
  if (solve === null) return null;
  return (at) => {
    const right = [...points.map(({ place }) => between(place, at)), 1];
    const weights = solve(right);
    const value = points.reduce((sum, point, index) => sum + (weights[index] ?? 0) * point.value, 0);
    const variance = weights.reduce((sum, weight, index) => sum + weight * (right[index] ?? 0), 0);
    return { value, standardError: Math.sqrt(Math.max(0, variance)) };
  };
}
