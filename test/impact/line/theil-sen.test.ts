import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { leastSquaresLine, pulledBySingleResults, robustLine } from "#lib/impact";

const even = Array.from({ length: 9 }, (_, x) => ({ x, y: 110 + 2 * x + (x % 2) }));
const far = even.map((point) => (point.x === 8 ? { ...point, y: 400 } : point));

describe("robustLine", () => {
  test("hardly moves with one result that lies far off, where the ordinary line does", () => {
    expect(robustLine(far, 0.9).slope).toBeCloseTo(2, 0);
    expect(leastSquaresLine(far).slope).toBeGreaterThan(10);
    expect(pulledBySingleResults(leastSquaresLine(far), robustLine(far, 0.9))).toBe(true);
    expect(pulledBySingleResults(leastSquaresLine(even), robustLine(even, 0.9))).toBe(false);
  });

  test("can't say whether single results pull where there are too few for a range", () => {
    const few = even.slice(0, 4);
    expect(pulledBySingleResults(leastSquaresLine(few), robustLine(few, 0.95))).toBeNull();
  });

  test("turns with the results: a steeper line and a shift are found as such", () =>
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 90, max: 200 }), { minLength: 5, maxLength: 14 }),
        fc.integer({ min: -5, max: 5 }),
        fc.integer({ min: -40, max: 40 }),
        (levels, steeper, higher) => {
          const points = levels.map((y, x) => ({ x, y }));
          const moved = levels.map((y, x) => ({ x, y: y + higher + steeper * x }));
          expect(robustLine(moved, 0.9).slope).toBeCloseTo(robustLine(points, 0.9).slope + steeper, 9);
          expect(robustLine(moved, 0.9).intercept).toBeCloseTo(robustLine(points, 0.9).intercept + higher, 8);
        },
      ),
    ));

  test("has a wider range for a higher chance, with the slope inside", () =>
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 90, max: 200, noNaN: true }), { minLength: 6, maxLength: 20 }),
        (levels) => {
          const points = levels.map((y, x) => ({ x, y }));
          const [narrow, wide] = [robustLine(points, 0.8), robustLine(points, 0.95)];
          if (narrow.slopeRange === null || wide.slopeRange === null) throw new Error("six results carry a range");
          expect(wide.slopeRange.low).toBeLessThanOrEqual(narrow.slopeRange.low);
          expect(wide.slopeRange.high).toBeGreaterThanOrEqual(narrow.slopeRange.high);
          expect(narrow.slopeRange.low).toBeLessThanOrEqual(narrow.slope);
          expect(narrow.slopeRange.high).toBeGreaterThanOrEqual(narrow.slope);
        },
      ),
    ));

  test("takes no observations at two ages", () =>
    expect(() =>
      robustLine(
        [1, 1, 2, 2].map((x) => ({ x, y: x })),
        0.9,
      ),
    ).toThrow(RangeError));
});
