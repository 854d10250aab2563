import { describe, expect, test } from "vitest";
import { breakEven } from "#lib/cost";

describe("breakEven", () => {
  // by hand: 100 + 3x = 140 + x at x = 20, seen from x = 0
  test("finds where two lines cross", () => {
    const lines = { at: 0, firstCost: 100, secondCost: 140, firstSlope: 3, secondSlope: 1 };
    expect(breakEven(lines)).toEqual({ kind: "at", value: 20 });
  });

  test("tells parallel lines from equal ones", () => {
    const parallel = { at: 5, firstCost: 100, secondCost: 140, firstSlope: 2, secondSlope: 2 };
    expect(breakEven(parallel)).toEqual({ kind: "nowhere" });
    expect(breakEven({ ...parallel, secondCost: 100 })).toEqual({ kind: "everywhere" });
  });
});
