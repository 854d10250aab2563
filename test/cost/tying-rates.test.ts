import { describe, expect, test } from "vitest";
import { type CostFlow, tyingRates } from "#lib/cost";

const flow = (stream: readonly number[], recurrence: CostFlow["recurrence"] = "single"): CostFlow => ({
  part: "price",
  givenBy: "bid",
  category: "investment",
  recurrence,
  stream,
});
const range = { timing: "end-of-year", lowest: 0, highest: 0.15 } as const;
const ratesOf = (...comparison: Parameters<typeof tyingRates>) => {
  const found = tyingRates(...comparison);
  return found.kind === "at" ? found.rates : [];
};

describe("tyingRates", () => {
  // by hand: 100 now is worth 121 in two years at (121 ÷ 100)^½ − 1 = 10 %
  test("100 now and 121 in two years tie at 10 %", () => {
    const [rate, ...others] = ratesOf({ ...range, first: [flow([100])], second: [flow([0, 0, 121])] });
    expect(rate).toBeCloseTo(0.1, 12);
    expect(others).toEqual([]);
  });

  // by hand: with x = 1 + rate, 100x² − 217x + 117.66 = 100 (x − 1.06) (x − 1.11), so 6 % and 11 %
  test("finds both ties where the difference turns twice", () => {
    const found = ratesOf({ ...range, first: [flow([100]), flow([0, 0, 117.66])], second: [flow([0, 217])] });
    expect(found.map((rate) => rate.toFixed(10))).toEqual(["0.0600000000", "0.1100000000"]);
  });

  // by hand: 105 paid yearly in mid-year 1 is worth 105 ÷ (1 + rate)^½; equal to 100 at 1.05² − 1 = 10.25 %
  test("moves what recurs every year to mid-year where that is the convention", () => {
    const comparison = { first: [flow([100])], second: [flow([0, 105], "yearly")] };
    expect(ratesOf({ ...range, ...comparison })[0]).toBeCloseTo(0.05, 12);
    expect(ratesOf({ ...range, ...comparison, timing: "mid-year" })[0]).toBeCloseTo(0.1025, 12);
  });

  test("finds a tie at the end of the range", () => {
    expect(ratesOf({ ...range, first: [flow([100])], second: [flow([0, 100])] })).toEqual([0]);
  });

  test("says so where two cost the same at every rate", () => {
    const stream = [100, 3, 50];
    expect(tyingRates({ ...range, first: [flow(stream)], second: [flow(stream)] })).toEqual({ kind: "everywhere" });
  });

  test("says so where one costs less at every rate looked at", () => {
    expect(tyingRates({ ...range, first: [flow([100, 3])], second: [flow([90, 3])] })).toEqual({ kind: "nowhere" });
  });
});
