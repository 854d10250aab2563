import { distanceToEdge, type FieldOutline, isInside, type Place } from "#lib/field";
import { measured } from "#lib/quantity";

export const placeAt = (x: number, y: number): Place => ({
  x: measured("distance", x),
  y: measured("distance", y),
});

export const distanceBetween = (one: Place, other: Place): number => Math.hypot(one.x - other.x, one.y - other.y);

/** The smallest upright box around the outline. */
export function boundsOf({ corners }: FieldOutline) {
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  const [left, bottom] = [Math.min(...xs), Math.min(...ys)];
  return { left, bottom, length: Math.max(...xs) - left, width: Math.max(...ys) - bottom };
}

/** Middles of the cells of an even grid that lie inside the outline, row by row. Cells are about `spacing` m wide. */
export function gridInside(outline: FieldOutline, spacing: number): readonly Place[] {
  const { left, bottom, length, width } = boundsOf(outline);
  const [columns, rows] = [Math.max(1, Math.round(length / spacing)), Math.max(1, Math.round(width / spacing))];
  return Array.from({ length: rows * columns }, (_, index) =>
    placeAt(
      left + ((index % columns) + 0.5) * (length / columns),
      bottom + (Math.floor(index / columns) + 0.5) * (width / rows),
    ),
  ).filter((place) => isInside(outline, place));
}

/** Cells along the shorter side of the grid that candidates are taken from. */
const finest = 40;

/** Candidates all over the field, with their distance to the edge. */
export function candidatesIn(outline: FieldOutline): readonly Readonly<{ place: Place; edge: number }>[] {
  const { length, width } = boundsOf(outline);
  for (let cells = finest; cells <= 64 * finest; cells *= 2) {
    const found = gridInside(outline, Math.min(length, width) / cells);
    if (found.length > 0) return found.map((place) => ({ place, edge: distanceToEdge(outline, place) }));
  }
  throw new RangeError("the outline encloses no place");
}

/** Points tried along the way from a spot outside to the middle of the field. */
const stepsInward = 400;

/** The place itself where it lies inside with `margin` m to the edge; else the first such place on the way to `anchor`. */
export function movedInside(outline: FieldOutline, wanted: Place, anchor: Place, margin: number): Place {
  for (let step = 0; step < stepsInward; step += 1) {
    const share = step / stepsInward;
    const place = placeAt(wanted.x + (anchor.x - wanted.x) * share, wanted.y + (anchor.y - wanted.y) * share);
    if (isInside(outline, place) && distanceToEdge(outline, place) >= margin) return place;
  }
  return anchor;
}
