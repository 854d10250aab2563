import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CriterionWindow, criterionWindows, headInjuryCriterion, type Trace } from "#lib/trace";
import { pulseOf, type Shape, traceOf } from "./pulses";

/** Every pair of samples, one after the other, straight from the definition. */
function byEveryPair({ levels, interval }: Trace, longest: number): number {
  let most = 0;
  for (let from = 0; from < levels.length; from += 1) {
    let integral = 0;
    for (let to = from + 1; to < levels.length && (to - from) * interval <= longest * (1 + 1e-9); to += 1) {
      integral += (((levels[to - 1] ?? 0) + (levels[to] ?? 0)) / 2) * interval;
      const length = (to - from) * interval;
      if (integral > 0) most = Math.max(most, length * (integral / length) ** 2.5);
    }
  }
  return most;
}

const level = fc.double({ min: -60, max: 300, noNaN: true });
const jagged = fc.array(level, { minLength: 2, maxLength: 160 });
/** Levels that change little from sample to sample, so that many intervals come close to the best. */
const wandering = fc
  .array(fc.double({ min: -9, max: 9, noNaN: true }), { minLength: 2, maxLength: 160 })
  .map((steps) => steps.map((_, index) => steps.slice(0, index + 1).reduce((sum, step) => sum + step, 0)));
const plateaus = fc
  .array(fc.tuple(fc.integer({ min: -2, max: 4 }), fc.integer({ min: 1, max: 12 })), { minLength: 1, maxLength: 14 })
  .map((parts) => parts.flatMap(([height, length]) => Array.from({ length: length + 1 }, () => 30 * height)));
const anyLevels = fc.oneof(jagged, wandering, plateaus).filter((levels) => levels.length >= 2);
const interval = fc.constantFrom(0.0001, 0.0005, 0.001, 0.0025);
const windows = Object.keys(criterionWindows) as CriterionWindow[];

describe("headInjuryCriterion", () => {
  test.each(windows)("finds what trying every pair of samples finds, %s", (window) => {
    fc.assert(
      fc.property(anyLevels, interval, (levels, step) => {
        const trace = traceOf(levels, step);
        const wanted = byEveryPair(trace, criterionWindows[window]);
        const found = headInjuryCriterion(trace, window);
        expect(Math.abs(found.value - wanted)).toBeLessThanOrEqual(1e-9 * (wanted + 1e-9));
        expect(found.to - found.from).toBeLessThanOrEqual(criterionWindows[window] * (1 + 1e-9));
      }),
      { numRuns: 1500 },
    );
  });

  test("gives for its interval what the interval says", () => {
    fc.assert(
      fc.property(anyLevels, (levels) => {
        const { value, from, to, meanLevel } = headInjuryCriterion(traceOf(levels, 0.001), "any-length");
        expect((to - from) * meanLevel ** 2.5).toBeCloseTo(value, 8);
      }),
    );
  });

  test("is 0 where the level never rises above zero", () =>
    expect(headInjuryCriterion(traceOf([0, -4, -1, -8, 0], 0.001), "any-length").value).toBe(0));

  // derived: at the optimum of a pulse with one peak, the level at both ends is 0.6 of the mean between them
  test.each<Shape>(["parabola", "half-sine", "haversine", "triangle", "leaning triangle"])(
    "ends its interval at 0.6 of the mean level, %s",
    (shape) => {
      const trace = pulseOf(shape, 150, 0.01, 20_000);
      const { from, to, meanLevel } = headInjuryCriterion(trace, "any-length");
      for (const time of [from, to]) {
        const at = trace.levels[Math.round(time / trace.interval)] ?? 0;
        expect(at / meanLevel).toBeCloseTo(0.6, 3);
      }
    },
  );

  test("grows with the 2.5th power of the level and with the time", () => {
    fc.assert(
      fc.property(anyLevels, fc.double({ min: 0.2, max: 5, noNaN: true }), (levels, factor) => {
        const one = headInjuryCriterion(traceOf(levels, 0.001), "any-length").value;
        const higher = headInjuryCriterion(
          traceOf(
            levels.map((at) => factor * at),
            0.001,
          ),
          "any-length",
        ).value;
        const slower = headInjuryCriterion(traceOf(levels, 0.001 * factor), "any-length").value;
        expect(higher).toBeCloseTo(one * factor ** 2.5, 6 - Math.ceil(Math.log10(1 + higher)));
        expect(slower).toBeCloseTo(one * factor, 6 - Math.ceil(Math.log10(1 + slower)));
      }),
    );
  });

  test("never falls when quiet samples are added, and a cap never raises it", () => {
    fc.assert(
      fc.property(anyLevels, (levels) => {
        const alone = headInjuryCriterion(traceOf(levels, 0.001), "any-length").value;
        const longer = headInjuryCriterion(traceOf([0, 0, ...levels, 0], 0.001), "any-length").value;
        expect(longer).toBeGreaterThanOrEqual(alone * (1 - 1e-9) - 1e-12);
        const capped = headInjuryCriterion(traceOf(levels, 0.001), "15-ms").value;
        expect(capped).toBeLessThanOrEqual(alone * (1 + 1e-9) + 1e-12);
      }),
    );
  });
});
