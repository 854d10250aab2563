import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type AgedLevel, driftFromAgedPoints, type FittedDrift, predictedLevel } from "#lib/impact";
import { aged } from "./levels";

const fitted = (points: readonly AgedLevel[]): FittedDrift => {
  const drift = driftFromAgedPoints(points);
  if (drift.kind !== "fitted") throw new Error(drift.reason);
  return drift;
};

const open = (years: number, high: number) => aged(years, Number.NEGATIVE_INFINITY, high);
const levels = fc.uniqueArray(
  fc.record({ years: fc.integer({ min: 0, max: 20 }), level: fc.double({ min: 60, max: 220, noNaN: true }) }),
  {
    minLength: 3,
    maxLength: 10,
    selector: ({ years }) => years,
  },
);
const toPoints = (drawn: readonly { years: number; level: number }[]) =>
  drawn.map(({ years, level }) => aged(years, level));

describe("driftFromAgedPoints", () => {
  test("does not fit a line to levels at two ages", () =>
    expect(driftFromAgedPoints([aged(0, 110), aged(5, 120), aged(5, 122)])).toEqual({
      kind: "not-enough-points",
      distinctAges: 2,
      reason: "A line with an honest spread needs levels at 3 different ages; the bid gives 2 with both sides stated.",
    }));

  test("does not count a level that is open on one side", () =>
    expect(driftFromAgedPoints([aged(0, 110), aged(5, 120), open(8, 165)])).toMatchObject({ distinctAges: 2 }));

  test("says that there is no level", () =>
    expect(driftFromAgedPoints([])).toMatchObject({
      reason:
        "A line with an honest spread needs levels at 3 different ages; the bid gives none with both sides stated.",
    }));

  test("gives back the line that exact points lie on", () => {
    const line = fc.record({
      start: fc.double({ min: 60, max: 160, noNaN: true }),
      rate: fc.double({ min: -5, max: 9, noNaN: true }),
    });
    fc.assert(
      fc.property(line, ({ start, rate }) => {
        const drift = fitted([0, 2, 3, 7].map((years) => aged(years, start + rate * years)));
        expect(drift.slope).toBeCloseTo(rate, 9);
        expect(drift.intercept).toBeCloseTo(start, 9);
        expect(drift.residualDeviation).toBeCloseTo(0, 9);
      }),
    );
  });

  test("does not depend on the order of the points", () =>
    fc.assert(
      fc.property(levels, (drawn) => {
        const [one, other] = [fitted(toPoints(drawn)), fitted(toPoints(drawn).toReversed())];
        expect(other.slope).toBeCloseTo(one.slope, 8);
        expect(other.intercept).toBeCloseTo(one.intercept, 7);
        expect(other.residualDeviation).toBeCloseTo(one.residualDeviation, 8);
      }),
    ));

  test("moves with the levels and with the ages", () =>
    fc.assert(
      fc.property(levels, fc.integer({ min: 1, max: 10 }), (drawn, shift) => {
        const one = fitted(toPoints(drawn));
        const harder = fitted(toPoints(drawn.map(({ years, level }) => ({ years, level: level + shift }))));
        expect(harder.slope).toBeCloseTo(one.slope, 8);
        expect(harder.intercept).toBeCloseTo(one.intercept + shift, 7);
        const older = fitted(toPoints(drawn.map(({ years, level }) => ({ years: years + shift, level }))));
        expect(older.slope).toBeCloseTo(one.slope, 8);
        expect(predictedLevel(older, 4 + shift, 0.95).high).toBeCloseTo(predictedLevel(one, 4, 0.95).high, 6);
      }),
    ));
});

describe("predictedLevel", () => {
  const points = [aged(0, 108), aged(2, 118), aged(5, 121), aged(8, 140)];

  test("is narrowest at the mean age and widens away from it", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        (near, further) => {
          const drift = fitted(points);
          const width = (distance: number) => {
            const { low, high } = predictedLevel(drift, drift.meanAge + distance, 0.95);
            return high - low;
          };
          expect(width(near + further)).toBeGreaterThan(width(near));
          expect(width(-near)).toBeCloseTo(width(near), 8);
        },
      ),
    ));

  test("is wider for a higher chance", () => {
    const [less, more] = [0.8, 0.99].map((chance) => predictedLevel(fitted(points), 6, chance));
    expect(more?.high).toBeGreaterThan(less?.high ?? Number.NaN);
    expect(more?.low).toBeLessThan(less?.low ?? Number.NaN);
    expect(more?.likely).toBe(less?.likely);
  });

  test("holds every line that levels inside their stated ranges can give", () => {
    const ranged = [aged(0, 105, 111), aged(2, 114, 114), aged(5, 120, 130), aged(8, 131, 139)];
    const { low, high } = predictedLevel(fitted(ranged), 12, 0.95);
    const place = fc.double({ min: 0, max: 1, noNaN: true });
    const scatter = (high - low) / 2;
    fc.assert(
      fc.property(fc.tuple(place, place, place, place), (places) => {
        const inside = ranged.map(({ years, level }, index) =>
          aged(years, level.low + (places[index] ?? 0) * (level.high - level.low)),
        );
        const { likely } = predictedLevel(fitted(inside), 12, 0.95);
        expect(likely).toBeGreaterThanOrEqual(low);
        expect(likely).toBeLessThanOrEqual(high);
      }),
    );
    const exact = predictedLevel(
      fitted(ranged.map(({ years, level }) => aged(years, (level.low + level.high) / 2))),
      12,
      0.95,
    );
    expect(scatter).toBeGreaterThan((exact.high - exact.low) / 2);
  });
});
