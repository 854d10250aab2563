import { describe, expect, test } from "vitest";
import { flowPresentValue, presentValue } from "#lib/cost";

describe("presentValue", () => {
  test("does not discount year 0", () => expect(presentValue([100], 0.07)).toBe(100));
  test("is a plain sum at a rate of 0", () => expect(presentValue([100, 50, -20], 0)).toBe(130));
  // by hand: 100 ÷ 2 + 100 ÷ 4
  test("halves with each year at a rate of 100 %", () => expect(presentValue([0, 100, 100], 1)).toBe(75));
  test("of nothing is 0", () => expect(presentValue([], 0.03)).toBe(0));
});

describe("flowPresentValue", () => {
  const flow = { part: "price", givenBy: "bid", category: "testing", stream: [0, 0, 100] } as const;
  // by hand at a rate of 300 %, where half a year is a factor of 2
  test("moves only what recurs every year to the middle of its year", () => {
    const discounting = { rate: 3, timing: "mid-year" } as const;
    expect(flowPresentValue({ ...flow, recurrence: "yearly" }, discounting)).toBe(12.5);
    expect(flowPresentValue({ ...flow, recurrence: "single" }, discounting)).toBe(6.25);
  });
});
