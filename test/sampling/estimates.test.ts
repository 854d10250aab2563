import { describe, expect, test } from "vitest";
import {
  isEnough,
  meanEstimate,
  namedStream,
  quantileInterval,
  sampleQuantile,
  samplesForShare,
  shareEstimate,
  shareInterval,
  usualStop,
} from "#lib/sampling";

describe("meanEstimate", () => {
  test("gives mean, deviation and standard error", () => {
    const { value, deviation, standardError } = meanEstimate([2, 4, 4, 4, 5, 5, 7, 9]);
    expect(value).toBe(5);
    expect(deviation).toBeCloseTo(Math.sqrt(32 / 7), 12);
    expect(standardError).toBeCloseTo(Math.sqrt(32 / 7 / 8), 12);
  });
  test("keeps its digits where all samples are large", () => {
    expect(meanEstimate([1e9 + 1, 1e9 + 2, 1e9 + 3]).deviation).toBe(1);
  });
  test("knows no error from one sample, and no mean from none", () => {
    expect(meanEstimate([3]).standardError).toBe(Number.POSITIVE_INFINITY);
    expect(() => meanEstimate([])).toThrow(RangeError);
  });
  test("holds the true mean within two standard errors about 95 times in 100", () => {
    const generator = namedStream(11, "coverage of means");
    const samples = new Float64Array(400);
    let held = 0;
    for (let run = 0; run < 1000; run += 1) {
      generator.fillShares(samples);
      const { value, standardError } = meanEstimate(samples);
      if (Math.abs(value - 0.5) <= 1.959964 * standardError) held += 1;
    }
    // four standard errors of a share of 0.95 in 1,000 runs
    expect(Math.abs(held - 950)).toBeLessThan(28);
  });
});

describe("shareEstimate and shareInterval", () => {
  // cost-and-decision reference: MC-SE-prop
  test("gives 0.005 for one half of 10,000", () => expect(shareEstimate(5000, 10_000).standardError).toBe(0.005));
  // Newcombe, Statistics in Medicine 17, 1998, table I, method 3 (from memory)
  test("reproduces the published Wilson intervals", () => {
    const published: readonly (readonly [number, number, number, number])[] = [
      [81, 263, 0.2553, 0.3662],
      [15, 148, 0.0624, 0.1605],
      [0, 20, 0, 0.1611],
      [1, 29, 0.0061, 0.1718],
    ];
    for (const [hits, tries, low, high] of published) {
      const interval = shareInterval(hits, tries);
      expect(interval.low).toBeCloseTo(low, 4);
      expect(interval.high).toBeCloseTo(high, 4);
    }
  });
  test("ends at 100 % where every try came out", () => expect(shareInterval(20, 20).high).toBe(1));
  test("refuses what is no share", () => {
    for (const [hits, tries] of [
      [1, 0],
      [-1, 5],
      [6, 5],
    ] as const)
      expect(() => shareEstimate(hits, tries)).toThrow(RangeError);
  });
});

describe("samplesForShare", () => {
  // cost-and-decision reference, MC-N-prop: 95 % within ± 0.01 at worst wants 9,604
  test("asks for 9,604 samples for ± 0.01 with 95 % confidence", () => {
    expect(samplesForShare(0.01 / 1.959964)).toBe(9604);
  });
});

describe("sampleQuantile and quantileInterval", () => {
  // numpy 1.24.2: np.quantile([1, 2, 4, 8], [0, .1, .5, .9, 1])
  test("reads quantiles as numpy does", () => {
    const found = [0, 0.1, 0.5, 0.9, 1].map((chance) => sampleQuantile([1, 2, 4, 8], chance));
    for (const [at, value] of [1, 1.3, 3, 6.8, 8].entries()) expect(found[at]).toBeCloseTo(value, 12);
  });
  test("holds the true quantile about 95 times in 100", () => {
    const generator = namedStream(12, "coverage of quantiles");
    const samples = new Float64Array(500);
    for (const chance of [0.1, 0.5, 0.9]) {
      let held = 0;
      for (let run = 0; run < 1000; run += 1) {
        generator.fillShares(samples);
        samples.sort();
        const { low, high } = quantileInterval(samples, chance);
        if (low <= chance && chance <= high) held += 1;
      }
      expect(held).toBeGreaterThan(950 - 28);
      expect(held).toBeLessThan(950 + 40);
    }
  });
  test("ends at the outermost samples where there are few", () => {
    expect(quantileInterval([1, 2, 3], 0.9)).toEqual({ low: 1, high: 3 });
  });
});

describe("isEnough", () => {
  test("goes on until means and shares are known", () => {
    const known = { value: 1000, standardError: 0.9 };
    const share = { value: 0.5, standardError: 0.004 };
    expect(isEnough([known], [share])).toBe(true);
    expect(isEnough([known], [share], { ...usualStop, shareWithin: 0.003 })).toBe(false);
    expect(isEnough([{ value: 1000, standardError: 1.1 }], [share])).toBe(false);
    expect(isEnough([known], [{ value: 0.5, standardError: 0.006 }])).toBe(false);
  });
});
