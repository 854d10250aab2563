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

  test("smooth distribution of 0.50, 0.85, 2.00 [pert-mean], exact variance against the classical [pert-var-classic]", () => {
    expect(meanOf(disposal)).toBeCloseTo(0.98333333, 8);
    expect(varianceOf(disposal)).toBeCloseTo(0.07019841, 8);
    // the classical rule, ((high − low) ÷ 6)², only comes near
    expect(((2 - 0.5) / 6) ** 2).toBeCloseTo(0.0625, 9);
    expect(varianceOf(disposal) / 0.0625).toBeGreaterThan(1.12);
  });

  test("smooth distributions have the shapes of a beta distribution [pert-shape, pert-sym]", () => {
    // shapes from mean and variance on the unit interval, the method of moments, which is exact for a beta distribution
    const shapes = (terms: Readonly<{ low: number; likely: number; high: number }>) => {
      const one: Distribution = { kind: "pert", ...terms };
      const width = terms.high - terms.low;
      const [mean, variance] = [(meanOf(one) - terms.low) / width, varianceOf(one) / width ** 2];
      const both = (mean * (1 - mean)) / variance - 1;
      return [mean * both, (1 - mean) * both];
    };
    const [alpha, beta] = shapes({ low: 0.5, likely: 0.85, high: 2 });
    expect(alpha).toBeCloseTo(1.933333, 6);
    expect(beta).toBeCloseTo(4.066667, 6);
    expect(varianceOf({ kind: "pert", low: 0, likely: 0.5, high: 1 })).toBeCloseTo(0.03571429, 8);
  });

  test("lognormal of mean 100 and spread 25 % [lognormal-params]", () => {
    const quantile = quantileOf({ kind: "lognormal", mean: 100, variation: 0.25 });
    expect(quantile(0.5)).toBeCloseTo(97.0143, 4);
    expect(quantile(0.9)).toBeCloseTo(133.0071, 4);
    expect(Math.log(quantile(0.5))).toBeCloseTo(4.574858, 6);
    expect(Math.log(quantile(0.8413447460685429) / quantile(0.5))).toBeCloseTo(0.246221, 6);
  });
});
