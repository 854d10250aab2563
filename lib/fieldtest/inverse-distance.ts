import { type FieldOutline, inSight, type Place } from "#lib/field";
import { distanceBetween } from "./places";

/** A value measured at a place, as a plain number in the unit of its map. */
export type MeasuredPlace = Readonly<{ place: Place; value: number }>;

/** Distance in m within which a place counts as a measured one. */
const onThePoint = 1e-9;

/**
 * The mean of the measured values weighted by 1 ÷ distance². Values that the edge of the field hides are left out where
 * others are in sight.
 * @throws RangeError without a measured value
 * @source Shepard, A two-dimensional interpolation function for irregularly-spaced data, ACM National Conference (1968)
 */
export function inverseDistanceValue(points: readonly MeasuredPlace[], at: Place, outline: FieldOutline): number {
  const [first] = points;
  if (first === undefined) throw new RangeError("nothing was measured");
  const onPoint = points.find(({ place }) => distanceBetween(place, at) <= onThePoint);
  if (onPoint !== undefined) return onPoint.value;
  const seen = points.filter(({ place }) => inSight(outline, place, at));
  const used = seen.length > 0 ? seen : points;
  let [sum, weights] = [0, 0];
  for (const { place, value } of used) {
    const weight = 1 / distanceBetween(place, at) ** 2;
    sum += weight * value;
    weights += weight;
  }
  return sum / weights;
}
