import { describe, expect, test } from "vitest";
import { costPerAreaYear, costPerHour, equivalentAnnualCost } from "#lib/cost";

describe("equivalent annual cost", () => {
  test("at a rate of 0 is the present value spread evenly", () => {
    expect(equivalentAnnualCost(2000, 0, 20)).toBeCloseTo(100, 12);
  });

  test("of a yearly cost is that cost", () => {
    // derived: 1 a year for 2 years at 100 % is worth ½ + ¼
    expect(equivalentAnnualCost(0.75, 1, 2)).toBeCloseTo(1, 12);
  });

  test("refuses to be shared by no hours and by no area", () => {
    expect(() => costPerHour(100, 0)).toThrow("hours of use must be above 0 a year, got 0");
    expect(() => costPerAreaYear(100, -1)).toThrow("the area must be above 0 m², got -1");
  });
});
