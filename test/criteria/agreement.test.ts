import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agreement, explainAgreement, midRanks } from "#lib/criteria";

const by = (...rows: readonly (readonly number[])[]) =>
  agreement(rows.map((scores, at) => ({ evaluator: `e${at}`, scores })));

describe("midRanks", () => {
  test("give the best 1 and equals the mean of their places", () => {
    expect(midRanks([8, 6, 6, 3])).toEqual([1, 2.5, 2.5, 4]);
  });
});

describe("agreement", () => {
  test("is 1 where all give one order, by whatever points, and 0 where two orders are opposite", () => {
    expect(by([9, 5, 1], [70, 60, 10])).toMatchObject({ concordance: 1, meanCorrelation: 1 });
    expect(by([9, 5, 1], [1, 5, 9])).toMatchObject({ concordance: 0, meanCorrelation: -1 });
  });
  test("stays from 0 to 1 and doesn't mind the order of evaluators or bids", () => {
    const row = fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(fc.array(row, { minLength: 2, maxLength: 5 }), (rows) => {
        const measured = by(...rows);
        if (measured.kind !== "measured") return;
        expect(measured.concordance).toBeGreaterThanOrEqual(-1e-12);
        expect(measured.concordance).toBeLessThanOrEqual(1 + 1e-12);
        const turned = by(...rows.toReversed().map((scores) => scores.toReversed()));
        expect(turned.kind === "measured" && turned.concordance).toBeCloseTo(measured.concordance, 12);
      }),
    );
  });
  test("has nothing to compare with one evaluator, one bid, or the same for all", () => {
    for (const measured of [by([1, 2]), by([1], [2]), by([3, 3], [4, 4]), by()])
      expect(measured).toEqual({ kind: "nothing-to-compare" });
  });
  test("refuses unlike numbers of bids", () => {
    expect(() => by([1, 2], [1])).toThrow(RangeError);
  });
  test("says in words how far evaluators agree", () => {
    expect(explainAgreement(by([9, 5, 1], [70, 60, 10]))).toBe(
      "The evaluators put the bids in much the same order. Kendall’s W is 1.00, where 1 is one order from all and 0 is none.",
    );
    expect(explainAgreement(by([4, 3, 2, 1], [4, 2, 3, 1], [3, 4, 1, 2]))).toBe(
      "The evaluators agree in part. Kendall’s W is 0.64, where 1 is one order from all and 0 is none. Talk about the bids they place furthest apart.",
    );
    expect(explainAgreement(by([9, 5, 1], [1, 5, 9]))).toBe(
      "The evaluators hardly agree on an order. Kendall’s W is 0.00, where 1 is one order from all and 0 is none. Read the criteria together before you settle on one score.",
    );
    expect(explainAgreement(by())).toBe(
      "There are not two evaluators with an order of the bids, so there is nothing to compare.",
    );
  });
});
