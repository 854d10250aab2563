import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fieldArea, fieldShapeSchema } from "#lib/field";
import { inUnit, measured } from "#lib/quantity";

const outline = (corners: readonly string[], unit = "ft") =>
  fieldShapeSchema.safeParse({ kind: "polygon-by-coordinates", unit, corners });

const sentences = (parsed: ReturnType<typeof outline>) =>
  parsed.error?.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);

function squareFeet(corners: readonly string[], unit = "ft"): number {
  const area = fieldArea(fieldShapeSchema.parse({ kind: "polygon-by-coordinates", unit, corners }));
  return area.kind === "known" ? inUnit("area", area.value, "ft²") : Number.NaN;
}

describe("a field by the coordinates of its corners", () => {
  test("has the area counted off squared paper for an L-shaped field", () => {
    // 300 × 100 and, on top of it, 100 × 60 (counted by hand)
    const corners = ["0, 0", "300, 0", "300, 100", "100, 100", "100, 160", "0, 160"];
    expect(squareFeet(corners)).toBeCloseTo(36_000, 6);
    expect(squareFeet(corners.toReversed())).toBeCloseTo(36_000, 6);
  });

  test("satisfies Pick's theorem for corners on whole numbers", () => {
    // Pick (1899): area = points inside + points on the outline ÷ 2 − 1; this quadrilateral has 12 inside and 6 on it
    expect(squareFeet(["0, 0", "5, 1", "4, 4", "1, 4"])).toBeCloseTo(14, 9);
  });

  test("keeps its digits where the coordinates are those of a state grid", () => {
    const corners = ["2123456.25, 712345.5", "2123816.25, 712345.5", "2123816.25, 712505.5", "2123456.25, 712505.5"];
    expect(squareFeet(corners)).toBeCloseTo(57_600, 3);
  });

  test("does not change when the field is moved", () => {
    const whole = fc.integer({ min: -5000, max: 5000 });
    fc.assert(
      fc.property(whole, whole, (x, y) => {
        const moved = [`${x}, ${y}`, `${x + 30}, ${y}`, `${x}, ${y + 40}`];
        expect(squareFeet(moved)).toBeCloseTo(600, 6);
      }),
    );
  });

  test("shows every corner in its working", () => {
    const area = fieldArea(
      fieldShapeSchema.parse({ kind: "polygon-by-coordinates", unit: "m", corners: ["0, 0", "10, 0", "0, 10"] }),
    );
    expect(area.kind === "known" && area.working.inputs).toEqual([
      { label: "corner 1, x and y", text: "0, 0 m", from: { kind: "brief", field: "field.corners.0" } },
      { label: "corner 2, x and y", text: "10, 0 m", from: { kind: "brief", field: "field.corners.1" } },
      { label: "corner 3, x and y", text: "0, 10 m", from: { kind: "brief", field: "field.corners.2" } },
    ]);
  });

  test.each([
    [["0, 0"], "corners: An outline needs at least 3 corners; 1 is listed."],
    [["0, 0", "1, 0"], "corners: An outline needs at least 3 corners; 2 are listed."],
    [
      ["0, 0", "9, 0", "9, 9", "0, 0"],
      "corners: Corner 4 (0, 0) is the same point as corner 1. List each corner once; the outline closes by itself.",
    ],
    [
      ["0, 0", "9, 9", "9, 0", "0, 9"],
      "corners: Side 1–2 meets side 3–4. List the corners in order around the outline.",
    ],
    [
      ["0, 0", "9, 0", "4, 0", "4, 5"],
      "corners: Side 1–2 meets side 2–3. List the corners in order around the outline.",
    ],
    [
      ["4, 0", "4, 5", "0, 0", "9, 0"],
      "corners: Side 1–2 meets side 3–4. List the corners in order around the outline.",
    ],
    [
      ["9, 0", "4, 0", "4, 5", "0, 0"],
      "corners: Side 1–2 meets side 4–1. List the corners in order around the outline.",
    ],
    [
      ["0, 0", "9, 0", "9, 9", "5, 0", "0, 9"],
      "corners: Side 1–2 meets side 3–4. List the corners in order around the outline.",
    ],
    [["0.1, 0.1", "0.7, 1.9", "0.8, 2.2"], "corners: All corners lie on one straight line, so they enclose no area."],
    [["0, 0", "1, 1", "2, 2"], "corners: All corners lie on one straight line, so they enclose no area."],
    [
      ["0, 0", "ten, 0", "9, 9"],
      "corners.1: “ten, 0” is not a corner. Write two numbers with a comma between, like “120.5, 60”.",
    ],
  ])("refuses %j and says why", (corners, sentence) => {
    expect(sentences(outline(corners))).toEqual([sentence]);
  });

  test("accepts a corner in the middle of a straight side", () => {
    expect(squareFeet(["0, 0", "5, 0", "10, 0", "10, 10", "0, 10"])).toBeCloseTo(100, 9);
  });
});

const tape = (sides: readonly string[], diagonals: readonly string[] = []) =>
  fieldShapeSchema.safeParse({ kind: "polygon-by-sides", sides, diagonals });

function tapedSquareMetres(sides: readonly string[], diagonals: readonly string[] = []): number {
  const area = fieldArea(fieldShapeSchema.parse({ kind: "polygon-by-sides", sides, diagonals }));
  return area.kind === "known" ? area.value : Number.NaN;
}

describe("a field by its sides and diagonals", () => {
  test("has the area of Heron's own triangle 13, 14, 15", () => {
    // Heron of Alexandria, Metrica I.8 works this triangle out to 84
    expect(tapedSquareMetres(["13 m", "14 m", "15 m"])).toBeCloseTo(84, 10);
  });

  test("keeps its digits for a needle-like triangle", () => {
    // W. Kahan's table of needle-like triangles (from memory): sides 100000, 99999.99979, 0.00029 enclose about 9.999999990
    expect(tapedSquareMetres(["100000 m", "99999.99979 m", "0.00029 m"])).toBeCloseTo(9.99999999, 6);
  });

  test("agrees with the coordinates for a five-sided field", () => {
    const points = [
      [0, 0],
      [60, -10],
      [110, 20],
      [90, 70],
      [10, 60],
    ] as const;
    const apart = (from: number, to: number) => {
      const [a, b] = [points[from], points[to]];
      return a && b ? `${Math.hypot(a[0] - b[0], a[1] - b[1]).toFixed(9)} m` : "";
    };
    const sides = [apart(0, 1), apart(1, 2), apart(2, 3), apart(3, 4), apart(4, 0)];
    // shoelace by hand: 0·−10−60·0 = 0; 60·20−110·−10 = 2300; 110·70−90·20 = 5900; 90·60−10·70 = 4700; 0; half of 12900
    expect(tapedSquareMetres(sides, [apart(0, 2), apart(0, 3)])).toBeCloseTo(6450, 4);
  });

  test("agrees with half of two sides times the sine of the angle between them", () => {
    const length = fc.double({ min: 1, max: 500, noNaN: true });
    fc.assert(
      fc.property(length, length, fc.double({ min: 0.05, max: 3.09, noNaN: true }), (one, two, angle) => {
        const third = Math.sqrt(one ** 2 + two ** 2 - 2 * one * two * Math.cos(angle));
        fc.pre(third > 0.01);
        const side = (value: number) => ({
          asEntered: `${value} m`,
          dimension: "distance" as const,
          unit: "m",
          value: measured("distance", value),
        });
        const area = fieldArea({ kind: "polygon-by-sides", sides: [side(one), side(two), side(third)], diagonals: [] });
        const expected = (one * two * Math.sin(angle)) / 2;
        expect(area.kind === "known" && Math.abs(area.value - expected) / expected).toBeLessThan(1e-6);
      }),
    );
  });

  test.each([
    [["3 ft", "4 ft"], [], "sides: A field needs at least 3 sides; 2 are listed."],
    [
      ["3 ft", "4 ft", "5 ft", "6 ft"],
      [],
      "diagonals: A field of 4 sides needs 1 diagonal from corner 1; 0 are listed.",
    ],
    [
      ["100 ft", "50 ft", "100 ft", "50 ft"],
      ["200 ft"],
      "sides: The triangle of corners 1, 2 and 3 can't close: side 1–2 (100 ft) and side 2–3 (50 ft) together are no longer than diagonal 1–3 (200 ft). Measure these three again.",
    ],
    [
      ["100 ft", "50 ft", "10 ft", "50 ft"],
      ["110 ft"],
      "sides: The triangle of corners 1, 3 and 4 can't close: side 3–4 (10 ft) and side 4–1 (50 ft) together are no longer than diagonal 1–3 (110 ft). Measure these three again.",
    ],
    [
      ["3 ft", "4 ft", "7 ft"],
      [],
      "sides: The triangle of corners 1, 2 and 3 can't close: side 1–2 (3 ft) and side 2–3 (4 ft) together are no longer than side 3–1 (7 ft). Measure these three again.",
    ],
  ])("refuses sides %j with diagonals %j and says why", (sides, diagonals, sentence) => {
    const issues = tape(sides, diagonals).error?.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);
    expect(issues).toEqual([sentence]);
  });
});

test("an outline of more corners than any field has is refused", () => {
  const many = Array.from({ length: 201 }, (_, index) => `${index}, ${index ** 2}`);
  expect(sentences(outline(many))).toEqual(["corners: List at most 200 corners."]);
});
