import type { FieldOutline, Place } from "#lib/field";
import { type DimensionName, type In, measured, type SiUnit } from "#lib/quantity";
import { inverseDistanceValue, type MeasuredPlace } from "./inverse-distance";
import { type KrigedValue, ordinaryKriging } from "./kriging";
import { gridInside } from "./places";
import { empiricalVariogram, fittedVariogram, type Variogram } from "./variogram";

/** A value somewhere on the field; the standard error is null where the method gives none. */
export type MapNode<D extends DimensionName> = Readonly<{
  place: Place;
  value: In<SiUnit<D>>;
  standardError: In<SiUnit<D>> | null;
}>;

/** What was measured on a field and what that suggests between. */
export type FieldMap<D extends DimensionName> = Readonly<{
  dimension: D;
  method: "kriging" | "inverse-distance";
  /** Why this method, and the model where it is kriging. */
  because: string;
  variogram: Variogram | null;
  points: readonly Readonly<{ place: Place; value: In<SiUnit<D>> }>[];
  /** Middles of the cells that lie inside the field; each stands for an equal part of it. */
  nodes: readonly MapNode<D>[];
  warning: string;
}>;

export type MapWish<D extends DimensionName> = Readonly<{
  dimension: D;
  points: readonly Readonly<{ place: Place; value: In<SiUnit<D>> }>[];
  outline: FieldOutline;
  /** Width of a cell in m. */
  spacing: In<"m">;
  method: "by-number-of-points" | "inverse-distance";
}>;

/** Fewest points from which a variogram is fitted. @source common practice, no source; textbooks ask for more, 50 to 100 */
const fewestForKriging = 30;

const warning =
  "Only the marked points were measured. What stands between them is worked out from their distance; a spot between two points can be harder or thinner than both. No verdict rests on it.";

/**
 * A map of values over the field: ordinary kriging where there are enough points to see how values change with
 * distance, else inverse distance weighting. Null without a point.
 */
export function fieldMap<D extends DimensionName>(wish: MapWish<D>): FieldMap<D> | null {
  const points = oneEach(wish.points);
  if (points.length === 0) return null;
  const kriged = wish.method === "inverse-distance" ? null : krigedFrom(points);
  const at = (place: Place): Readonly<{ value: number; standardError: number | null }> =>
    kriged === null
      ? { value: inverseDistanceValue(points, place, wish.outline), standardError: null }
      : kriged.value(place);
  return {
    dimension: wish.dimension,
    method: kriged === null ? "inverse-distance" : "kriging",
    because: reason(wish.method, points.length, kriged?.variogram ?? null),
    variogram: kriged?.variogram ?? null,
    points: points.map(({ place, value }) => ({ place, value: measured(wish.dimension, value) })),
    nodes: gridInside(wish.outline, wish.spacing).map((place) => {
      const { value, standardError } = at(place);
      return {
        place,
        value: measured(wish.dimension, value),
        standardError: standardError === null ? null : measured(wish.dimension, standardError),
      };
    }),
    warning,
  };
}

/** One point a place: readings of one place count with their mean. */
function oneEach(points: readonly MeasuredPlace[]): readonly MeasuredPlace[] {
  const byPlace = new Map<string, { place: Place; values: number[] }>();
  for (const { place, value } of points) {
    const key = `${place.x} ${place.y}`;
    const kept = byPlace.get(key);
    if (kept === undefined) byPlace.set(key, { place, values: [value] });
    else kept.values.push(value);
  }
  return [...byPlace.values()].map(({ place, values }) => ({
    place,
    value: values.reduce((sum, value) => sum + value, 0) / values.length,
  }));
}

type Kriged = Readonly<{ variogram: Variogram; value: (place: Place) => KrigedValue }>;

function krigedFrom(points: readonly MeasuredPlace[]): Kriged | null {
  if (points.length < fewestForKriging) return null;
  const variogram = fittedVariogram(empiricalVariogram(points));
  if (variogram === null || variogram.partialSill === 0) return null;
  const value = ordinaryKriging(points, variogram);
  return value === null ? null : { variogram, value };
}

function reason(method: MapWish<DimensionName>["method"], count: number, variogram: Variogram | null): string {
  if (method === "inverse-distance") return "Inverse distance weighting, as asked for.";
  if (variogram !== null)
    return `Ordinary kriging with a ${variogram.shape} variogram fitted to ${count} points; values are alike up to about ${Math.round(variogram.range)} m apart.`;
  return count < fewestForKriging
    ? `Inverse distance weighting: ${count} points are too few to fit a variogram; ${fewestForKriging} are asked for.`
    : "Inverse distance weighting: the points do not show that near values are more alike than far ones.";
}
