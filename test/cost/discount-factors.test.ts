import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  capitalRecovery,
  escalatingUniformPresentWorth,
  singlePresentWorth,
  sinkingFund,
  uniformPresentWorth,
} from "#lib/cost";

const rate = fc.double({ min: -0.4, max: 0.3, noNaN: true });
const years = fc.integer({ min: 1, max: 60 });
const yearsUpTo = (last: number) => Array.from({ length: last }, (_, index) => index + 1);
const relative = (actual: number, expected: number) => Math.abs(actual - expected) / Math.abs(expected);

describe("discount factors", () => {
  test("a uniform factor is the sum of the single factors", () => {
    fc.assert(
      fc.property(rate, years, (perYear, last) => {
        const sum = yearsUpTo(last).reduce((total, year) => total + singlePresentWorth(perYear, year), 0);
        expect(relative(uniformPresentWorth(perYear, last), sum)).toBeLessThan(1e-9);
      }),
    );
  });

  test("an escalating factor is the sum of the escalated single factors", () => {
    fc.assert(
      fc.property(rate, rate, years, (perYear, growth, last) => {
        const grown = (year: number) => (1 + growth) ** year * singlePresentWorth(perYear, year);
        const sum = yearsUpTo(last).reduce((total, year) => total + grown(year), 0);
        expect(relative(escalatingUniformPresentWorth(perYear, growth, last), sum)).toBeLessThan(1e-9);
      }),
    );
  });

  test("at a rate of 0 the uniform factor counts the years, and near 0 it stays close", () => {
    expect(uniformPresentWorth(0, 20)).toBe(20);
    expect(uniformPresentWorth(1e-12, 20)).toBeCloseTo(20, 8);
    expect(escalatingUniformPresentWorth(0.03, 0.03 + 1e-12, 20)).toBeCloseTo(20, 8);
  });

  test("capital recovery is the sinking fund plus the rate", () => {
    fc.assert(
      fc.property(rate, years, (perYear, last) => {
        expect(capitalRecovery(perYear, last)).toBeCloseTo(sinkingFund(perYear, last) + perYear, 9);
      }),
    );
  });

  test("refuses a rate of −100 % and a spread over no years", () => {
    expect(() => singlePresentWorth(-1, 5)).toThrow("a rate above −100 % is needed, got -100 %");
    expect(() => uniformPresentWorth(Number.NaN, 5)).toThrow("a rate above −100 % is needed");
    expect(() => escalatingUniformPresentWorth(0.03, -1, 5)).toThrow("a rate above −100 % is needed");
    expect(() => capitalRecovery(0.03, 0)).toThrow("a number of years above 0 is needed, got 0");
  });
});
