import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  distanceToEdge,
  type FieldOutline,
  fieldArea,
  fieldOutline,
  fieldShapeSchema,
  inSight,
  isInside,
} from "#lib/field";
import { measured } from "#lib/quantity";

const outlineOf = (shape: unknown): FieldOutline => {
  const found = fieldOutline(fieldShapeSchema.parse(shape));
  if (found === null) throw new Error("no outline");
  return found;
};
const at = (x: number, y: number) => ({ x: measured("distance", x), y: measured("distance", y) });
const areaWithin = ({ corners }: FieldOutline) =>
  Math.abs(
    corners.reduce((sum, { x, y }, index) => {
      const next = corners[(index + 1) % corners.length];
      return sum + (next === undefined ? 0 : x * next.y - next.x * y);
    }, 0),
  ) / 2;

/** Like an L: 60 m by 40 m without its far upper quarter. */
const angled = {
  kind: "polygon-by-coordinates",
  unit: "m",
  corners: ["0,0", "60,0", "60,20", "30,20", "30,40", "0,40"],
};

describe("fieldOutline", () => {
  test.each([
    [{ kind: "rectangle", length: "100 m", width: "60 m" }],
    [{ kind: "sport", sport: "us-football", runOff: "10 ft" }],
    [angled],
    [{ kind: "polygon-by-sides", sides: ["100 m", "60 m", "100 m", "60 m"], diagonals: ["116.61903789690601 m"] }],
    [{ kind: "polygon-by-sides", sides: ["40 m", "30 m", "35 m", "45 m", "25 m"], diagonals: ["55 m", "60 m"] }],
  ])("encloses the area of the field, %j", (shape) => {
    const area = fieldArea(fieldShapeSchema.parse(shape));
    expect(areaWithin(outlineOf(shape))).toBeCloseTo(area.kind === "known" ? area.value : Number.NaN, 6);
  });
  test("is not known for a field of which only the area was measured", () =>
    expect(
      fieldOutline(fieldShapeSchema.parse({ kind: "measured-area", area: "8000 m²", how: "a survey" })),
    ).toBeNull());
});

describe("places and the edge", () => {
  const outline = outlineOf(angled);
  test("a place in the cut-out is outside", () => {
    expect(isInside(outline, at(10, 10))).toBe(true);
    expect(isInside(outline, at(45, 30))).toBe(false);
    expect(isInside(outline, at(-1, 10))).toBe(false);
  });
  test("the distance is to the nearest side", () => {
    expect(distanceToEdge(outline, at(10, 15))).toBe(10);
    expect(distanceToEdge(outline, at(33, 24))).toBe(3);
  });
  test("the edge hides what lies around the corner", () => {
    expect(inSight(outline, at(20, 35), at(55, 15))).toBe(false);
    expect(inSight(outline, at(10, 35), at(10, 5))).toBe(true);
  });
  test("a place is inside a rectangle exactly where both its coordinates are", () => {
    const rectangle = outlineOf({ kind: "rectangle", length: "100 m", width: "60 m" });
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 150, noNaN: true }),
        fc.double({ min: -50, max: 150, noNaN: true }),
        (x, y) => {
          fc.pre(distanceToEdge(rectangle, at(x, y)) > 1e-6);
          expect(isInside(rectangle, at(x, y))).toBe(x > 0 && x < 100 && y > 0 && y < 60);
        },
      ),
    );
  });
});
