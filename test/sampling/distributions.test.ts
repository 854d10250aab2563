import fc from "fast-check";
import jStat from "jstat";
import { describe, expect, test } from "vitest";
import {
  betaShare,
  type Distribution,
  type DistributionKind,
  distributionInWords,
  distributions,
  logBetaScale,
  meanOf,
  normalQuantile,
  normalShare,
  quantileOf,
  statedOf,
  varianceOf,
} from "#lib/sampling";

/** Mean and variance by adding up quantiles at the middles of equal steps of chance. */
function moments(distribution: Distribution, steps = 200_000) {
  const quantile = quantileOf(distribution);
  const values = Array.from({ length: steps }, (_, index) => quantile((index + 0.5) / steps));
  const mean = values.reduce((sum, value) => sum + value, 0) / steps;
  return { mean, variance: values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / steps };
}

const low = fc.double({ min: -1000, max: 1000, noNaN: true });
const step = fc.double({ min: 0.001, max: 1000, noNaN: true });
const three = fc.tuple(low, step, step).map(([a, up, on]) => ({ low: a, likely: a + up, high: a + up + on }));
const anyDistribution: fc.Arbitrary<Distribution> = fc.oneof(
  low.map((value) => ({ kind: "fixed", value }) as const),
  fc.tuple(low, step).map(([a, up]) => ({ kind: "uniform", low: a, high: a + up }) as const),
  three.map((terms) => ({ kind: "triangular", ...terms }) as const),
  three.map((terms) => ({ kind: "pert", ...terms }) as const),
  fc.tuple(low, step).map(([mean, deviation]) => ({ kind: "normal", mean, deviation }) as const),
  fc
    .tuple(step, fc.double({ min: 0, max: 2, noNaN: true }))
    .map(([mean, variation]) => ({ kind: "lognormal", mean, variation }) as const),
  fc
    .uniqueArray(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 5 })
    .map(
      (values) =>
        ({ kind: "discrete", values: values.map((value) => ({ value, chance: 1 / values.length })) }) as const,
    ),
);

describe("every distribution", () => {
  test("has quantiles that never fall as the chance rises", () => {
    const chance = fc.double({ min: 1e-12, max: 1 - 1e-12, noNaN: true });
    fc.assert(
      fc.property(anyDistribution, fc.array(chance, { minLength: 2, maxLength: 20 }), (distribution, chances) => {
        const quantile = quantileOf(distribution);
        const values = chances.toSorted((one, other) => one - other).map(quantile);
        for (const [at, value] of values.entries())
          expect(value).toBeGreaterThanOrEqual((values[at - 1] ?? Number.NEGATIVE_INFINITY) - 1e-9 * Math.abs(value));
      }),
      // a chance that is met exactly, and its neighbour
      {
        examples: [
          [{ kind: "pert", low: 0, likely: 0.001, high: 0.00854564002811232 }, [1e-12, 1.0000000000000004e-12]],
        ],
      },
    );
  });

  test("has the mean and variance that its quantiles add up to", () => {
    const those: readonly Distribution[] = [
      { kind: "fixed", value: 3 },
      { kind: "uniform", low: 2, high: 5 },
      { kind: "triangular", low: 4.2, likely: 4.85, high: 6 },
      { kind: "triangular", low: 4.2, likely: 4.2, high: 6 },
      { kind: "pert", low: 0.5, likely: 0.85, high: 2 },
      { kind: "pert", low: 0.5, likely: 2, high: 2 },
      { kind: "pert", low: 0.5, likely: 0.5, high: 2 },
      { kind: "normal", mean: 110, deviation: 15 },
      { kind: "lognormal", mean: 100, variation: 0.25 },
      {
        kind: "discrete",
        values: [
          { value: 12, chance: 0.25 },
          { value: 8, chance: 0.25 },
          { value: 10, chance: 0.5 },
        ],
      },
    ];
    for (const distribution of those) {
      const { mean, variance } = moments(distribution);
      expect(Math.abs(mean - meanOf(distribution)), distribution.kind).toBeLessThan(1e-6 * Math.abs(mean));
      expect(Math.abs(variance - varianceOf(distribution)), distribution.kind).toBeLessThanOrEqual(2e-4 * variance);
    }
  });

  test("stays at its one value where its ends meet", () => {
    const meeting: readonly Distribution[] = [
      { kind: "uniform", low: 2, high: 2 },
      { kind: "triangular", low: 2, likely: 2, high: 2 },
      { kind: "pert", low: 2, likely: 2, high: 2 },
      { kind: "normal", mean: 2, deviation: 0 },
      { kind: "discrete", values: [{ value: 2, chance: 1 }] },
    ];
    for (const distribution of meeting) {
      expect([0.001, 0.5, 0.999].map(quantileOf(distribution))).toEqual([2, 2, 2]);
      expect(varianceOf(distribution)).toBe(0);
    }
  });
});

describe("normalQuantile and normalShare", () => {
  // SciPy 1.17.1, scipy.stats.norm.ppf and cdf
  test("agree with SciPy to 15 digits", () => {
    const quantiles: readonly (readonly [number, number])[] = [
      [1e-300, -37.0470962993612],
      [1e-10, -6.361340902404056],
      [0.001, -3.090232306167813],
      [0.025, -1.9599639845400545],
      [0.0749, -1.4402382675279635],
      [0.0751, -1.4388253927525403],
      [0.3, -0.5244005127080409],
      [0.6, 0.2533471031357997],
      [0.999999, 4.753424308817087],
    ];
    for (const [chance, value] of quantiles) expect(Math.abs(normalQuantile(chance) / value - 1)).toBeLessThan(2e-15);
    const shares: readonly (readonly [number, number])[] = [
      [-8, 6.22096057427174e-16],
      [-5.5, 1.898956246588768e-8],
      [-4.9, 4.791832765903185e-7],
      [-1, 0.15865525393145707],
      [0.3, 0.6179114221889526],
      [2, 0.9772498680518208],
      [5.5, 0.9999999810104375],
    ];
    for (const [x, share] of shares) expect(Math.abs(normalShare(x) - share)).toBeLessThan(4e-16);
  });

  test("undo each other", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true }), (chance) => {
        expect(Math.abs(normalShare(normalQuantile(chance)) - chance)).toBeLessThan(1e-14);
      }),
    );
  });

  test("refuse what is no chance", () => {
    for (const chance of [-0.1, 1.1, Number.NaN]) expect(() => normalQuantile(chance)).toThrow(RangeError);
    expect([normalQuantile(0), normalQuantile(1)]).toEqual([Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]);
  });
});

describe("the beta share behind the smooth distribution", () => {
  // SciPy 1.17.1, scipy.stats.beta.cdf
  test("agrees with SciPy to 13 digits", () => {
    const cases: readonly (readonly [number, number, number, number])[] = [
      [1, 5, 0.001, 0.004990009995001],
      [1, 5, 0.2, 0.67232],
      [3, 3, 0.7, 0.83692],
      [1.05, 4.95, 0.001, 0.003725190730008138],
      [1.05, 4.95, 0.2, 0.6499979211733798],
      [5, 1, 0.2, 0.00032],
    ];
    for (const [first, second, x, share] of cases)
      expect(Math.abs(betaShare(x, { first, second }, logBetaScale({ first, second })) / share - 1)).toBeLessThan(
        1e-13,
      );
  });

  // SciPy 1.17.1, scipy.stats.beta.ppf scaled to the ends
  test("gives SciPy's quantiles to 1e-8 of the width", () => {
    const quantile = quantileOf({ kind: "pert", low: 0.5, likely: 0.85, high: 2 });
    const expected: readonly (readonly [number, number])[] = [
      [1e-6, 0.5003637837495498],
      [0.01, 0.5439642930700035],
      [0.1, 0.6569042215037615],
      [0.5, 0.9521362147613424],
      [0.9, 1.356851163931292],
      [0.99, 1.6525945259326882],
      [1 - 1e-6, 1.9654391415832448],
    ];
    for (const [chance, value] of expected) expect(Math.abs(quantile(chance) - value)).toBeLessThan(1.5e-8);
    const steep = quantileOf({ kind: "pert", low: 0, likely: 0.0125, high: 1 }); // shapes 1.05 and 4.95
    const steepExpected: readonly (readonly [number, number])[] = [
      [1e-6, 3.963416208814835e-7],
      [0.01, 0.002568874760479824],
      [0.5, 0.13852319028449522],
      [1 - 1e-6, 0.9399817692512034],
    ];
    for (const [chance, value] of steepExpected) expect(Math.abs(steep(chance) - value)).toBeLessThan(1e-8);
  });

  test("is followed by jstat to its six digits, which is why jstat does not serve here", () => {
    const shapes = { first: 1.9333333333333331, second: 4.066666666666666 };
    const differences = [0.05, 0.3, 0.7].map((x) => {
      const logScale = logBetaScale(shapes);
      return Math.abs(jStat.beta.cdf(x, shapes.first, shapes.second) - betaShare(x, shapes, logScale));
    });
    expect(Math.max(...differences)).toBeLessThan(1e-6);
    expect(Math.max(...differences)).toBeGreaterThan(1e-13);
  });
});

describe("distributionInWords", () => {
  test("says what each distribution means", () => {
    const dollars = (value: number) => `$${value}`;
    const says = (distribution: Distribution) => distributionInWords(distribution, dollars);
    expect(says({ kind: "fixed", value: 4 })).toBe("$4");
    expect(says({ kind: "uniform", low: 4, high: 6 })).toBe("anywhere from $4 to $6");
    expect(says({ kind: "triangular", low: 4, likely: 5, high: 6 })).toBe("most likely $5, from $4 to $6");
    expect(says({ kind: "pert", low: 4, likely: 5, high: 6 })).toBe("most likely about $5, from $4 to $6");
    expect(says({ kind: "normal", mean: 4, deviation: 1 })).toBe("on average $4, two times in three within $1 of it");
    expect(says({ kind: "lognormal", mean: 4, variation: 0.25 })).toBe(
      "on average $4, spread by 25 %, more to the upper side",
    );
    expect(
      says({
        kind: "discrete",
        values: [
          { value: 8, chance: 0.25 },
          { value: 10, chance: 0.75 },
        ],
      }),
    ).toBe("$8 (25 %), $10 (75 %)");
  });

  test("has a label and an example for each kind", () => {
    for (const kind of Object.keys(distributions) as DistributionKind[]) {
      expect(distributions[kind].label).not.toBe("");
      expect(distributions[kind].example).not.toBe("");
    }
  });

  test("states the most likely figure where there is one", () => {
    expect(statedOf({ kind: "triangular", low: 4, likely: 5, high: 7 })).toBe(5);
    expect(statedOf({ kind: "uniform", low: 4, high: 7 })).toBe(5.5);
    expect(
      statedOf({
        kind: "discrete",
        values: [
          { value: 8, chance: 0.4 },
          { value: 9, chance: 0.6 },
        ],
      }),
    ).toBe(9);
  });
});
