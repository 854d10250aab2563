import { describe, expect, test } from "vitest";
import { costDifference } from "#lib/cost";

describe("costDifference", () => {
  test("is a share of the lower cost, in either order", () => {
    const expected = { cents: 20, share: 0.25, verdict: "conclusive" };
    expect(costDifference(80, 100)).toEqual(expected);
    expect(costDifference(100, 80)).toEqual(expected);
  });

  test("of 10 % and more decides, just under it does not", () => {
    expect(costDifference(1000, 1100).verdict).toBe("conclusive");
    expect(costDifference(1000, 1099.99).verdict).toBe("inconclusive");
  });

  test("has no finite share where the lower cost is not above 0", () => {
    expect(costDifference(0, 0)).toEqual({ cents: 0, share: 0, verdict: "inconclusive" });
    expect(costDifference(-5, 10)).toEqual({ cents: 15, share: Number.POSITIVE_INFINITY, verdict: "conclusive" });
  });
});
