import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deviationsCounted, scoreBid } from "#lib/criteria";
import { figureFromInterval, known } from "#lib/figure";
import { measured } from "#lib/quantity";
import type { Distribution } from "#lib/sampling";
import { criteriaOf, criterionText, stated, working } from "./worked-score";

const mass = (value: number) => measured("arealDensity", value, "lb/ft²");
const si = (value: number) => Number(mass(value));
const [criterion] = criteriaOf([criterionText({ gate: { kind: "at-least", limit: "3 lb/ft²" } })]);

/** Scored from 2 lb/ft² (0) to 8 lb/ft² (1), at a gate of 3 lb/ft². */
function scoreOf(low: number, high: number, spread: Distribution | null = null) {
  if (criterion === undefined) throw new Error("one criterion");
  const figure =
    low === high
      ? known("arealDensity", mass(low), working)
      : figureFromInterval("arealDensity", { low: mass(low), high: mass(high) }, working);
  const [score] = scoreBid([criterion], { bid: "a", shown: { infill: { figure, evidence: stated, spread } } }).criteria;
  if (score === undefined) throw new Error("one criterion was scored");
  return score;
}

describe("a figure that scatters", () => {
  test("counts with two standard deviations to both sides in a score, and as stated at a gate", () => {
    const score = scoreOf(3.5, 3.5, { kind: "normal", mean: si(3.5), deviation: si(0.6) });
    expect(deviationsCounted).toBe(2);
    // by hand: 3.5 ± 1.2 runs from 2.3 to 4.7 lb/ft²; (2.3 − 2) ÷ 6 = 0.05 and (4.7 − 2) ÷ 6 = 0.45
    expect(score.value).toEqual({
      low: expect.closeTo(0.05, 12),
      likely: expect.closeTo(0.25, 12),
      high: expect.closeTo(0.45, 12),
    });
    expect(score.gate).toMatchObject({ kind: "meets", margin: expect.closeTo(si(0.5), 12) });
  });

  test("is even over a range that says no more", () => {
    expect(scoreOf(4, 6).spread).toEqual({ kind: "uniform", low: si(4), high: si(6) });
    expect(scoreOf(5, 5).spread).toBeNull();
  });

  test("keeps the spread that is stated", () => {
    const spread: Distribution = { kind: "triangular", low: si(4), likely: si(5), high: si(6) };
    expect(scoreOf(4, 6, spread).spread).toEqual(spread);
  });

  test("has its likely value inside its interval, and never a wider one for a smaller deviation", () => {
    const deviation = fc.double({ min: 0.001, max: 3, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 10, noNaN: true }), deviation, deviation, (mean, one, other) => {
        const width = (scatter: number) => {
          const { value } = scoreOf(mean, mean, { kind: "normal", mean: si(mean), deviation: si(scatter) });
          if (value?.likely == null) throw new Error("a likely value");
          expect(value.low).toBeLessThanOrEqual(value.likely);
          expect(value.likely).toBeLessThanOrEqual(value.high);
          return value.high - value.low;
        };
        expect(width(Math.min(one, other))).toBeLessThanOrEqual(width(Math.max(one, other)) + 1e-12);
      }),
    );
  });
});
