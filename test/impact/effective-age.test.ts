import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { effectiveYears, effectiveYearsAfterReset, type Reset } from "#lib/impact";

const resets = fc.uniqueArray(
  fc.record({ year: fc.integer({ min: 1, max: 20 }), undone: fc.double({ min: 0, max: 1, noNaN: true }) }),
  { selector: ({ year }) => year, maxLength: 6 },
);
const year = fc.integer({ min: 0, max: 30 });

describe("effectiveYears", () => {
  test("is the age itself without resets, and with resets that take nothing back", () =>
    fc.assert(
      fc.property(year, resets, (at, planned) => {
        expect(effectiveYears(at, [])).toBe(at);
        const idle = planned.map((reset): Reset => ({ ...reset, undone: 0 }));
        expect(effectiveYears(at, idle)).toBeCloseTo(at, 12);
      }),
    ));

  test("lies between nothing and the age", () =>
    fc.assert(
      fc.property(year, resets, (at, planned) => {
        expect(effectiveYears(at, planned)).toBeGreaterThanOrEqual(0);
        expect(effectiveYears(at, planned)).toBeLessThanOrEqual(at + 1e-12);
      }),
    ));

  test("never grows with one more reset, nor with one that takes more back", () =>
    fc.assert(
      fc.property(
        year,
        resets,
        fc.integer({ min: 21, max: 25 }),
        fc.integer({ min: 0, max: 5 }),
        (at, planned, new_, which) => {
          const before = effectiveYears(at + 10, planned);
          expect(effectiveYears(at + 10, [...planned, { year: new_, undone: 0.4 }])).toBeLessThanOrEqual(
            before + 1e-12,
          );
          const more = planned.map((reset, index) => (index === which ? { ...reset, undone: 1 } : reset));
          expect(effectiveYears(at + 10, more)).toBeLessThanOrEqual(before + 1e-12);
        },
      ),
    ));

  test("grows by one year from year to year unless something is done", () =>
    fc.assert(
      fc.property(year, resets, (at, planned) => {
        if (planned.some((reset) => reset.year === at)) return;
        expect(effectiveYears(at + 1, planned)).toBeCloseTo(effectiveYears(at, planned) + 1, 10);
      }),
    ));

  test("starts again after a reset that takes all back", () => {
    expect(effectiveYears(4, [{ year: 4, undone: 1 }])).toBe(4);
    expect(effectiveYearsAfterReset(4, [{ year: 4, undone: 1 }])).toBe(0);
    expect(effectiveYears(6, [{ year: 4, undone: 1 }])).toBe(2);
  });

  test("counts from the age of the value, so earlier resets are in it already", () => {
    expect(effectiveYears(8, [{ year: 3, undone: 1 }], 5)).toBe(3);
    expect(effectiveYears(8, [{ year: 6, undone: 0.5 }], 5)).toBe(2.5);
    expect(effectiveYears(3, [{ year: 2, undone: 1 }], 5)).toBe(-2);
  });

  test("says nothing of the time after where nothing is done", () =>
    expect(effectiveYearsAfterReset(5, [{ year: 4, undone: 1 }])).toBeNull());

  test("takes no share beyond the whole", () =>
    expect(() => effectiveYears(5, [{ year: 2, undone: 1.1 }])).toThrow(RangeError));
});
