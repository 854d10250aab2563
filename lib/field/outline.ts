import { type In, measured } from "#lib/quantity";
import type { FieldShape, PolygonBySides } from "./model";
import { sportFields } from "./sport-fields";

/** A place on the field in m from the origin of its outline. */
export type Place = Readonly<{ x: In<"m">; y: In<"m"> }>;

/** The edge of the turf as corners in order, and where their coordinates are measured from. */
export type FieldOutline = Readonly<{ corners: readonly Place[]; origin: string }>;

const place = (x: number, y: number): Place => ({ x: measured("distance", x), y: measured("distance", y) });

const box = ({ x, y }: Place, length: number, width: number): readonly Place[] => [
  place(x, y),
  place(x + length, y),
  place(x + length, y + width),
  place(x, y + width),
];

/** The edge of the turfed area; null where only its size is known. */
export function fieldOutline(shape: FieldShape): FieldOutline | null {
  switch (shape.kind) {
    case "rectangle":
      return {
        corners: box(place(0, 0), shape.length.value, shape.width.value),
        origin: "a corner of the turf; x along the length, y across",
      };
    case "sport": {
      const { length, width } = sportFields[shape.sport];
      const off = shape.runOff.value;
      return {
        corners: box(place(-off, -off), length + 2 * off, width + 2 * off),
        origin:
          "the corner where an end line meets a side line; x along the length, y across, below zero in the run-off",
      };
    }
    case "polygon-by-coordinates":
      return {
        corners: shape.corners.map(({ x, y }) => ({ x, y })),
        origin: "the zero point of the plan from which the corners were taken",
      };
    case "polygon-by-sides":
      return { corners: cornersByFan(shape), origin: "corner 1; x along the side to corner 2, y to its left" };
    case "measured-area":
      return null;
  }
}

/** Corners of a field measured by sides and diagonals: each next one turns on by the angle its triangle has at corner 1. */
function cornersByFan({ sides, diagonals }: PolygonBySides): readonly Place[] {
  const rays = [sides[0], ...diagonals, sides.at(-1)].map((ray) => ray?.value ?? 0);
  let angle = 0;
  const turned = rays.map((ray, index) => {
    const [before, outer] = [rays[index - 1], sides[index]?.value ?? 0];
    if (before !== undefined)
      angle += Math.acos(Math.min(1, Math.max(-1, (before ** 2 + ray ** 2 - outer ** 2) / (2 * before * ray))));
    return place(ray * Math.cos(angle), ray * Math.sin(angle));
  });
  return [place(0, 0), ...turned];
}

type Side = readonly [from: Place, to: Place];

const sidesOf = (corners: readonly Place[]): readonly Side[] =>
  corners.map((from, index) => [from, corners[index + 1] ?? corners[0] ?? from]);

/** Whether a place lies inside the outline; on the edge itself either answer may come. */
export function isInside({ corners }: FieldOutline, { x, y }: Place): boolean {
  return sidesOf(corners).reduce(
    (inside, [from, to]) =>
      from.y > y !== to.y > y && x < from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x) ? !inside : inside,
    false,
  );
}

/** Distance in m to the nearest point of the edge, from either side. */
export function distanceToEdge({ corners }: FieldOutline, { x, y }: Place): In<"m"> {
  const distances = sidesOf(corners).map(([from, to]) => {
    const [along, across] = [to.x - from.x, to.y - from.y];
    const share = ((x - from.x) * along + (y - from.y) * across) / (along ** 2 + across ** 2);
    const held = Math.min(1, Math.max(0, share));
    return Math.hypot(x - from.x - held * along, y - from.y - held * across);
  });
  return measured("distance", Math.min(...distances));
}

/** Whether the straight line between two places inside stays inside: no side of the outline runs across it. */
export function inSight({ corners }: FieldOutline, one: Place, other: Place): boolean {
  const turn = (a: Place, b: Place, c: Place) => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  return !sidesOf(corners).some(
    ([from, to]) =>
      turn(from, to, one) * turn(from, to, other) < 0 && turn(one, other, from) * turn(one, other, to) < 0,
  );
}
