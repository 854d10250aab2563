import type { Corner } from "./model";

/** What keeps a list of corners from being the outline of a field. Corners and sides are counted from 1. */
export type PolygonProblem = Readonly<
  | { kind: "too-few-corners"; count: number }
  | { kind: "corner-repeated"; first: number; again: number; asEntered: string }
  | { kind: "sides-cross"; side: string; other: string }
  | { kind: "no-area" }
>;

type Point = Readonly<{ x: number; y: number }>;

/** Twice the signed area of the triangle a, b, c: positive where c lies left of the way from a to b. */
const turn = (a: Point, b: Point, c: Point) => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/**
 * Area inside the outline in m², positive in either sense of going round.
 * Corners are taken relative to the first one, so that survey coordinates with large offsets lose no digits.
 * @source shoelace formula, derived from the cross product
 */
export function shoelaceArea(corners: readonly Point[]): number {
  const [origin] = corners;
  if (origin === undefined) return 0;
  const twice = corners.reduce((sum, corner, index) => sum + turn(origin, corner, corners[index + 1] ?? origin), 0);
  return Math.abs(twice) / 2;
}

/** Largest distance from the first corner along x or y: the yardstick for rounding. */
function extentOf(corners: readonly Point[]): number {
  const [origin] = corners;
  if (origin === undefined) return 0;
  return Math.max(...corners.map(({ x, y }) => Math.max(Math.abs(x - origin.x), Math.abs(y - origin.y))));
}

const between = (value: number, one: number, other: number) =>
  Math.min(one, other) <= value && value <= Math.max(one, other);

/** Whether two segments share a point. `speck` is the doubled area below which three points count as in line. */
function segmentsMeet([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point], speck: number): boolean {
  const side = (from: Point, to: Point, point: Point) => {
    const area = turn(from, to, point);
    return Math.abs(area) <= speck ? 0 : Math.sign(area);
  };
  const touches = (from: Point, to: Point, point: Point) =>
    side(from, to, point) === 0 && between(point.x, from.x, to.x) && between(point.y, from.y, to.y);
  if (touches(a, b, c) || touches(a, b, d) || touches(c, d, a) || touches(c, d, b)) return true;
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** Whether the side after a corner folds back onto the side before it. */
const foldsBack = (before: Point, corner: Point, after: Point, speck: number) =>
  Math.abs(turn(before, corner, after)) <= speck &&
  (before.x - corner.x) * (after.x - corner.x) + (before.y - corner.y) * (after.y - corner.y) > 0;

function repeatedCorner(corners: readonly Corner[]): PolygonProblem | null {
  for (const [index, { x, y, asEntered }] of corners.entries()) {
    const first = corners.findIndex((earlier) => earlier.x === x && earlier.y === y);
    if (first < index) return { kind: "corner-repeated", first: first + 1, again: index + 1, asEntered };
  }
  return null;
}

function crossingSides(corners: readonly Corner[], speck: number): PolygonProblem | null {
  const sides = corners.map((from, index) => {
    const next = (index + 1) % corners.length;
    return { name: `${index + 1}–${next + 1}`, from, to: corners[next] ?? from };
  });
  for (const [index, side] of sides.entries())
    for (const [later, other] of sides.entries()) {
      if (later <= index) continue;
      const crossing =
        later === index + 1
          ? foldsBack(side.from, side.to, other.to, speck)
          : index === 0 && later === sides.length - 1
            ? foldsBack(other.from, side.from, side.to, speck)
            : segmentsMeet([side.from, side.to], [other.from, other.to], speck);
      if (crossing) return { kind: "sides-cross", side: side.name, other: other.name };
    }
  return null;
}

/** The first thing that keeps the corners from enclosing one area; null for a sound outline. */
export function polygonProblem(corners: readonly Corner[]): PolygonProblem | null {
  if (corners.length < 3) return { kind: "too-few-corners", count: corners.length };
  const speck = 1e-12 * extentOf(corners) ** 2;
  const repeated = repeatedCorner(corners);
  if (repeated !== null) return repeated;
  if (corners.every((corner) => corners.every((other) => Math.abs(turn(corners[0] ?? corner, corner, other)) <= speck)))
    return { kind: "no-area" };
  return crossingSides(corners, speck);
}

/** Says which corners or sides are meant and what to do. */
export function explainPolygon(problem: PolygonProblem): string {
  switch (problem.kind) {
    case "too-few-corners":
      return `An outline needs at least 3 corners; ${problem.count} ${problem.count === 1 ? "is" : "are"} listed.`;
    case "corner-repeated":
      return `Corner ${problem.again} (${problem.asEntered}) is the same point as corner ${problem.first}. List each corner once; the outline closes by itself.`;
    case "sides-cross":
      return `Side ${problem.side} meets side ${problem.other}. List the corners in order around the outline.`;
    case "no-area":
      return "All corners lie on one straight line, so they enclose no area.";
  }
}
