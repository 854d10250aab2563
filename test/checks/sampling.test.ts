// Outside values of the cost-and-decision reference, section 1.7: closed forms of the distributions, computed there
// independently of this code. Ids in brackets are those of its machine-readable twin.
import { describe, expect, test } from "vitest";
import { type Distribution, meanOf, quantileOf, varianceOf } from "#lib/sampling";

const carpet: Distribution = { kind: "triangular", low: 4.2, likely: 4.85, high: 6 };
const disposal: Distribution = { kind: "pert", low: 0.5, likely: 0.85, high: 2 };

describe("distributions of the reference", () => {
  test("triangle of 4.20, 4.85, 6.00 [tri-q10, tri-q50, tri-q90]", () => {
    expect(meanOf(carpet)).toBeCloseTo(5.01666667, 8);
    expect(varianceOf(carpet)).toBeCloseTo(0.13847222, 8);
    const quantile = quantileOf(carpet);
    expect(quantile(0.1)).toBeCloseTo(4.542053, 6);
    expect(quantile(0.5)).toBeCloseTo(4.982651, 6);
    expect(quantile(0.9)).toBeCloseTo(5.545027, 6);
  });

  test("smooth distribution of 0.50, 0.85, 2.00 [pert-mean], exact variance against the classical 0.0625", () => {
    expect(meanOf(disposal)).toBeCloseTo((0.5 + 4 * 0.85 + 2) / 6, 12);
    expect(varianceOf(disposal)).toBeCloseTo(0.07019841, 8);
  });

  test("lognormal of mean 100 and spread 25 % [lognormal-params]", () => {
    const quantile = quantileOf({ kind: "lognormal", mean: 100, variation: 0.25 });
    expect(quantile(0.5)).toBeCloseTo(97.0143, 4);
    expect(quantile(0.9)).toBeCloseTo(133.0071, 4);
    expect(Math.log(quantile(0.5))).toBeCloseTo(4.574858, 6);
    expect(Math.log(quantile(0.8413447460685429) / quantile(0.5))).toBeCloseTo(0.246221, 6);
  });
});
