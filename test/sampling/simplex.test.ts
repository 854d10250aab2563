import jStat from "jstat";
import { describe, expect, test } from "vitest";
import { evenWeights, namedStream, nearbyWeights, orderedWeights, type WeightDraw } from "#lib/sampling";

const draws = 40_000;

const { beta } = jStat as unknown as Readonly<{
  beta: Readonly<Record<"inv" | "cdf", (at: number, one: number, other: number) => number>>;
}>;

function drawn(draw: WeightDraw, criteria: number, name: string): readonly Float64Array[] {
  const generator = namedStream(5, name);
  return Array.from({ length: draws }, () => {
    const weights = new Float64Array(criteria);
    draw(generator, weights);
    return weights;
  });
}

const shareOf = (all: readonly Float64Array[], holds: (weights: Float64Array) => boolean) =>
  all.filter(holds).length / all.length;
const meansOf = (all: readonly Float64Array[]) =>
  Array.from(all[0] ?? [], (_, at) => all.reduce((sum, weights) => sum + (weights[at] ?? 0), 0) / all.length);
const fourErrors = (share: number) => 4 * Math.sqrt((share * (1 - share)) / draws);

const sumToOne = (all: readonly Float64Array[]) => {
  for (const weights of all.slice(0, 500)) {
    expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
    expect(weights.every((weight) => weight >= 0)).toBe(true);
  }
};

describe("evenWeights", () => {
  // cost-and-decision reference, SMAA-threshold: P(w1 > c) = (1 − c)^(n − 1)
  test("lets the first weight pass one half in (1 − c)^(n − 1) of the draws", () => {
    for (const [criteria, share] of [
      [2, 0.5],
      [3, 0.25],
      [4, 0.125],
      [5, 0.0625],
    ] as const) {
      const all = drawn(evenWeights, criteria, `threshold ${criteria}`);
      sumToOne(all);
      expect(Math.abs(shareOf(all, ([first = 0]) => first > 0.5) - share)).toBeLessThan(fourErrors(share));
    }
  });
});

describe("orderedWeights", () => {
  // rank order centroid: Barron and Barrett 1996, table of the cost-and-decision reference
  test("has the rank order centroid as its mean and keeps the order", () => {
    const all = drawn(orderedWeights([2, 1, 3]), 3, "ordered");
    sumToOne(all);
    expect(all.every(([second = 0, first = 0, third = 0]) => first >= second && second >= third)).toBe(true);
    const means = meansOf(all);
    for (const [at, mean] of [0.277778, 0.611111, 0.111111].entries())
      expect(Math.abs((means[at] ?? 0) - mean)).toBeLessThan(0.003);
  });
  test("leaves criteria of equal rank free among themselves", () => {
    const all = drawn(orderedWeights([1, 2, 2]), 3, "equal ranks");
    expect(all.every(([first = 0, one = 0, other = 0]) => first >= one && first >= other)).toBe(true);
    const share = shareOf(all, ([, one = 0, other = 0]) => one > other);
    expect(Math.abs(share - 0.5)).toBeLessThan(fourErrors(0.5));
  });
});

describe("nearbyWeights", () => {
  // moments of the Dirichlet distribution: means w, variances w(1 − w)/(c + 1)
  test("has the owner's shares as means and the stated spread", () => {
    for (const concentration of [3, 30]) {
      const shares = [0.5, 0.3, 0.2, 0];
      const all = drawn(nearbyWeights(shares, concentration), 4, `nearby ${concentration}`);
      sumToOne(all);
      const means = meansOf(all);
      for (const [at, share] of shares.entries()) {
        const variance = (share * (1 - share)) / (concentration + 1);
        expect(Math.abs((means[at] ?? 0) - share)).toBeLessThanOrEqual(4 * Math.sqrt(variance / draws));
        const found = all.reduce((sum, weights) => sum + ((weights[at] ?? 0) - share) ** 2, 0) / draws;
        expect(Math.abs(found - variance)).toBeLessThanOrEqual(0.05 * variance);
      }
    }
  });
  // a share of a Dirichlet distribution has a beta distribution; quantiles by jstat, an outside library
  test("spreads each share as a beta distribution does, for small and for large shapes", () => {
    for (const [shares, concentration] of [
      [[0.9, 0.1], 0.4],
      [[0.02, 0.08, 0.3, 0.6], 5],
      [[0.001, 0.025, 0.125, 0.849], 40],
      [[0.25, 0.35, 0.4], 900],
    ] as const) {
      const all = drawn(nearbyWeights(shares, concentration), shares.length, `beta ${concentration}`);
      for (const [at, share] of shares.entries()) {
        const [one, other] = [share * concentration, (1 - share) * concentration];
        const rising = Float64Array.from(all, (weights) => weights[at] ?? 0).sort();
        for (const chance of [0.001, 0.01, 0.1, 0.25, 0.5, 0.75, 0.9, 0.99, 0.999]) {
          const quantile = beta.inv(chance, one, other);
          if (!(quantile > 1e-12 && quantile < 1 - 1e-9)) continue; // closer to an end jstat has no digits left
          const below = rising.findIndex((weight) => weight > quantile);
          const found = (below < 0 ? rising.length : below) / rising.length;
          expect(Math.abs(found - chance), `${share} of ${concentration} at ${chance}`).toBeLessThan(
            fourErrors(chance) + 1 / draws,
          );
        }
        // the largest distance of all from the whole curve: more than 1.95 ÷ √N comes up once in a thousand (Kolmogorov)
        let distance = 0;
        for (let step = 1; step < 200; step += 1) {
          const place = Math.floor((step * rising.length) / 200);
          const weight = rising[place] ?? 0;
          if (weight > 1e-12 && weight < 1 - 1e-9)
            distance = Math.max(distance, Math.abs(beta.cdf(weight, one, other) - place / rising.length));
        }
        expect(distance).toBeLessThan(1.95 / Math.sqrt(draws));
      }
    }
  });
  test("leaves no two shares tied to each other but by their sum", () => {
    // covariance of a Dirichlet distribution: −w₁·w₂ ÷ (c + 1)
    const shares = [0.4, 0.35, 0.25];
    const all = drawn(nearbyWeights(shares, 12), 3, "covariance");
    const [one = 0, other = 0] = shares;
    const found = all.reduce((sum, [first = 0, second = 0]) => sum + (first - one) * (second - other), 0) / all.length;
    expect(Math.abs(found + (one * other) / 13)).toBeLessThan(0.05 * ((one * other) / 13));
  });
  // concentration = number of criteria at equal shares is the even distribution
  test("is the even distribution at equal shares and a concentration of their number", () => {
    const all = drawn(nearbyWeights([1 / 3, 1 / 3, 1 / 3], 3), 3, "even as nearby");
    expect(Math.abs(shareOf(all, ([first = 0]) => first > 0.5) - 0.25)).toBeLessThan(fourErrors(0.25));
  });
  test("refuses a concentration that is not above 0", () => {
    expect(() => nearbyWeights([1], 0)).toThrow(RangeError);
  });
});
