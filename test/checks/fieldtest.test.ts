import { describe, expect, test } from "vitest";
import {
  fieldVerdict,
  fittedVariogram,
  locationLevel,
  locationsNeeded,
  locationUncertainty,
  locationVerdict,
  ordinaryKriging,
  pooledRepeatability,
  semivarianceAt,
  shareAboveLimit,
  statedRepeatability,
  toleranceFactor,
  upperToleranceLimit,
  type Variogram,
} from "#lib/fieldtest";
import type { Figure } from "#lib/figure";
import { measured } from "#lib/quantity";
import { at, dropsOn, grams } from "../fieldtest/campaigns";

const share = (part: number) => measured("fraction", part);
const knownValue = (figure: Figure) => (figure.kind === "known" ? figure.value : Number.NaN);
const highOf = (figure: Figure) => (figure.kind === "at-most" ? figure.high : Number.NaN);

describe("test results against the standard's practice", () => {
  // mean of drops 2 and 3: Penn State sports-surface research on ASTM F355/F1936
  test("reduces drops of 118, 131 and 135 g to 133 g", () => expect(locationLevel(dropsOn(118, 131, 135))).toBe(133));

  // ASTM F1936: below 200 (ASTM work item WK38153), at each location (from memory)
  const verdictOf = (levels: readonly number[]) =>
    fieldVerdict(levels.map((level) => locationVerdict(grams(level), grams(200), grams(0))));
  test("is not met with one location at 201 g, whatever the mean", () =>
    expect(verdictOf([140, 142, 138, 150, 145, 201, 144, 140])).toBe("does-not-meet"));
  test("is met with every location below 200 g", () =>
    expect(verdictOf([140, 142, 138, 150, 145, 199, 144, 140])).toBe("meets"));
});

describe("uncertainty of a location", () => {
  const five = [
    [118, 131, 135],
    [120, 128, 131],
    [122, 133, 134],
    [117, 126, 132],
    [119, 130, 130],
  ].map(([one = 0, two = 0, three = 0]) => dropsOn(one, two, three));
  // computed with SciPy 1.17.1: standard deviation of the differences ÷ √2; t quantiles for 4 degrees of freedom
  test("by the scatter between drops 2 and 3", () => {
    const pooled = pooledRepeatability(five);
    expect(pooled?.deviation).toBeCloseTo(1.688194301613413, 10);
    if (pooled === null) return;
    expect(locationUncertainty(pooled).guardBand).toBeCloseTo(2.544857, 5);
    expect(locationUncertainty(pooled).eitherSide).toBeCloseTo(3.314336, 5);
  });
  // computed with SciPy 1.17.1: 2.329163 g, 57.97 effective degrees of freedom (Welch and Satterthwaite), t 95 %
  test("with 2 g of the equipment", () => {
    const pooled = pooledRepeatability(five);
    expect(pooled === null ? 0 : locationUncertainty(pooled, grams(2)).guardBand).toBeCloseTo(3.8933476, 4);
  });
  // normal distribution, 95 % one-sided: 1.644854
  test("of a stated repeatability of 4 g", () =>
    expect(locationUncertainty(statedRepeatability(grams(4))).guardBand).toBeCloseTo((1.644854 * 4) / Math.SQRT2, 4));
});

describe("how many locations", () => {
  // exact binomial, SciPy 1.17.1 binom.cdf; 59 and 29 without a failure are the numbers of Wilks (1941)
  test.each([
    [0.05, 0, 59],
    [0.1, 0, 29],
    [0.2, 0, 14],
    [0.01, 0, 299],
    [0.05, 1, 93],
    [0.05, 2, 124],
    [0.05, 5, 208],
    [0.1, 1, 46],
    [0.1, 5, 103],
    [0.2, 2, 30],
  ])("show that at most %f lies above, with %i allowed", (part, allowed, count) =>
    expect(knownValue(locationsNeeded({ share: share(part), confidence: share(0.95) }, allowed))).toBe(count),
  );

  // SciPy 1.17.1, beta.ppf(0.95, k + 1, n − k)
  test.each([
    [8, 0, 0.3123439780663678],
    [10, 0, 0.2588655508930522],
    [10, 1, 0.39416330243650466],
    [20, 3, 0.3436638043142818],
    [100, 10, 0.16371762327581477],
  ])("%i of them with %i above leave room for a share", (tested, above, high) =>
    expect(highOf(shareAboveLimit(tested, above, share(0.95)))).toBeCloseTo(high, 10),
  );
});

describe("one-sided tolerance factors", () => {
  // NIST/SEMATECH e-Handbook 7.2.6.3: 43 values, 90 % covered, 99 % confidence
  test("43 values give 1.8740, as the handbook prints", () =>
    expect(toleranceFactor(43, 0.9, 0.99)).toBeCloseTo(1.874, 4));

  // computed with SciPy 1.17.1: nct.ppf(confidence, n − 1, z·√n) ÷ √n
  test.each([
    [2, 0.95, 0.95, 26.25967398303447],
    [2, 0.99, 0.99, 185.6169586032112],
    [3, 0.9, 0.95, 6.155281103326256],
    [5, 0.75, 0.9, 1.697790531891695],
    [8, 0.95, 0.95, 3.187293568447751],
    [10, 0.9, 0.95, 2.354640131829059],
    [10, 0.95, 0.95, 2.9109634130781665],
    [20, 0.95, 0.95, 2.3960016837521687],
    [30, 0.99, 0.95, 3.06390112623817],
    [50, 0.99, 0.99, 3.1246072420216846],
    [100, 0.95, 0.95, 1.926538850512315],
    [1000, 0.99, 0.95, 2.4301401532416937],
  ])("%i values, %f covered, confidence %f", (values, covered, confidence, factor) =>
    expect(toleranceFactor(values, covered, confidence) / factor).toBeCloseTo(1, 7),
  );

  // computed with SciPy 1.17.1: mean + factor × standard deviation
  test("eight locations have an upper limit of 154.77 g", () =>
    expect(
      knownValue(
        upperToleranceLimit([142, 138, 150, 145, 139, 144, 140, 141].map(grams), {
          share: share(0.05),
          confidence: share(0.95),
        }),
      ),
    ).toBeCloseTo(154.7706629, 5));
});

describe("kriging against a solver for linear systems", () => {
  const points = [
    [3, 4, 30],
    [20, 7, 34],
    [41, 3, 28.5],
    [10, 25, 31.2],
    [33, 22, 36.1],
    [50, 28, 29.9],
  ].map(([x = 0, y = 0, value = 0]) => ({ place: at(x, y), value }));
  // computed with NumPy 2.4.6, linalg.solve of the ordinary kriging system
  test.each<readonly [Variogram, x: number, y: number, value: number, error: number]>([
    [{ shape: "spherical", nugget: 1.5, partialSill: 8, range: 30 }, 25, 15, 34.11249186212831, 2.485433459151503],
    [{ shape: "spherical", nugget: 1.5, partialSill: 8, range: 30 }, 3.5, 4.5, 30.36986775832215, 1.7984865945220767],
    [{ shape: "exponential", nugget: 0.5, partialSill: 6, range: 40 }, 25, 15, 33.473813711186246, 2.091323950912411],
    [{ shape: "exponential", nugget: 0.5, partialSill: 6, range: 40 }, 48, 10, 30.414130360602925, 2.272953344127283],
  ])("%o at %f, %f", (variogram, x, y, value, error) => {
    const found = ordinaryKriging(points, variogram)?.(at(x, y));
    expect(found?.value).toBeCloseTo(value, 9);
    expect(found?.standardError).toBeCloseTo(error, 9);
  });

  // derived: bins that lie on a model are fitted by that model; its range of 30 is one of those tried for bins up to 40 m
  test("the fit finds the model that its bins lie on", () => {
    const model: Variogram = { shape: "spherical", nugget: 1, partialSill: 5, range: 30 };
    const bins = [2, 6, 10, 14, 18, 22, 26, 30, 35, 40].map((distance) => ({
      distance,
      semivariance: semivarianceAt(model, distance),
      pairs: 20,
    }));
    const fitted = fittedVariogram(bins);
    expect(fitted?.shape).toBe("spherical");
    expect(fitted?.nugget).toBeCloseTo(1, 9);
    expect(fitted?.partialSill).toBeCloseTo(5, 9);
    expect(fitted?.range).toBeCloseTo(30, 9);
  });

  // computed with SciPy 1.17.1, optimize.minimize of Σ pairs/distance² · (semivariance − model)² over all three numbers:
  // nugget 1.43387, partial sill 5.12048, range 36.2113; ours tries ranges in steps of 0.95 m
  test("the fit to scattered bins weighs near and well-filled ones more", () => {
    const fitted = fittedVariogram(
      [
        [3, 2.1, 14],
        [8, 2.9, 40],
        [13, 4.4, 55],
        [18, 4.9, 60],
        [23, 5.2, 66],
        [28, 6.9, 58],
        [33, 6.1, 50],
        [38, 6.6, 41],
      ].map(([distance = 0, semivariance = 0, pairs = 0]) => ({ distance, semivariance, pairs })),
    );
    expect(fitted?.shape).toBe("spherical");
    expect(fitted?.nugget).toBeCloseTo(1.434, 2);
    expect(fitted?.partialSill).toBeCloseTo(5.12, 1);
    expect(Math.abs((fitted?.range ?? 0) - 36.2113)).toBeLessThan(0.5);
  });
});
