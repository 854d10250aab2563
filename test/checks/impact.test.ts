import { all, create } from "mathjs";
import { describe, expect, test } from "vitest";
import {
  type DepthLaw,
  depthMargin,
  driftFromAgedPoints,
  type FittedDrift,
  halfInchRule,
  levelAfterDepthLoss,
  lossToReach,
  predictedLevel,
  studentFactor,
} from "#lib/impact";
import { inUnit } from "#lib/quantity";
import { aged, grams, inches, stated } from "../impact/levels";

const lineThrough = (pairs: readonly (readonly [level: number, age: number])[]): FittedDrift => {
  const drift = driftFromAgedPoints(pairs.map(([level, age]) => aged(age, level)));
  if (drift.kind !== "fitted") throw new Error(drift.reason);
  return drift;
};

/** NIST Statistical Reference Datasets, linear regression, "Norris" (y, x); from memory, borne out by its certified values. */
const norris = [
  [0.1, 0.2],
  [338.8, 337.4],
  [118.1, 118.2],
  [888.0, 884.6],
  [9.2, 10.1],
  [228.1, 226.5],
  [668.5, 666.3],
  [998.5, 996.3],
  [449.1, 448.6],
  [778.9, 777.0],
  [559.2, 558.2],
  [0.3, 0.4],
  [0.1, 0.6],
  [778.1, 775.5],
  [668.8, 666.9],
  [339.3, 338.0],
  [448.9, 447.5],
  [10.8, 11.6],
  [557.7, 556.0],
  [228.3, 228.1],
  [998.0, 995.8],
  [888.8, 887.6],
  [119.6, 120.2],
  [0.3, 0.3],
  [0.6, 0.3],
  [557.6, 556.8],
  [339.3, 339.1],
  [888.0, 887.2],
  [998.5, 999.0],
  [778.9, 779.0],
  [10.2, 11.1],
  [117.6, 118.3],
  [228.9, 229.2],
  [668.4, 669.1],
  [449.2, 448.9],
  [0.2, 0.5],
] as const;

/** F. J. Anscombe, "Graphs in Statistical Analysis", The American Statistician 27 (1973); from memory. (y, x) */
const anscombe = [
  [8.04, 10],
  [6.95, 8],
  [7.58, 13],
  [8.81, 9],
  [8.33, 11],
  [9.96, 14],
  [7.24, 6],
  [4.26, 4],
  [10.84, 12],
  [4.82, 7],
  [5.68, 5],
] as const;

describe("the fitted line against published data", () => {
  test("gives NIST's certified values for Norris", () => {
    const drift = lineThrough(norris);
    expect(drift.intercept).toBeCloseTo(-0.262323073774029, 9);
    expect(drift.slope).toBeCloseTo(1.00211681802045, 9);
    expect(drift.residualDeviation).toBeCloseTo(0.884796396144373, 9);
    expect(drift.interceptError).toBeCloseTo(0.232818234301152, 9);
    expect(drift.slopeError).toBeCloseTo(0.429796848199937e-3, 9);
    expect(drift.degreesOfFreedom).toBe(34);
  });

  test("gives Anscombe's printed figures", () => {
    const drift = lineThrough(anscombe);
    expect(Math.abs(drift.intercept - 3)).toBeLessThan(0.005);
    expect(Math.abs(drift.slope - 0.5)).toBeLessThan(0.0005);
    expect(Math.abs(drift.slopeError - 0.118)).toBeLessThan(0.0005);
    expect(Math.abs(drift.residualDeviation ** 2 * drift.degreesOfFreedom - 13.75)).toBeLessThan(0.02);
  });

  // another road: x₀ᵀ(XᵀX)⁻¹x₀ by the matrix routines of mathjs
  test.each([0, 4, 9, 16])("gives the standard error that matrix algebra gives at age %i", (age) => {
    const math = create(all ?? {});
    const design = math.matrix(anscombe.map(([, x]) => [1, x]));
    const levels = math.matrix(anscombe.map(([y]) => y));
    const inverse = math.inv(math.multiply(math.transpose(design), design));
    const line = math.multiply(math.multiply(inverse, math.transpose(design)), levels);
    const misfit = math.subtract(levels, math.multiply(design, line));
    const variance = Number(math.dot(misfit, misfit)) / (anscombe.length - 2);
    const leverage = Number(math.dot([1, age], math.multiply(inverse, [1, age])));
    expect(predictedLevel(lineThrough(anscombe), age, 0.95).standardError).toBeCloseTo(
      Math.sqrt(variance * (1 + leverage)),
      10,
    );
    expect(predictedLevel(lineThrough(anscombe), age, 0.95).likely).toBeCloseTo(Number(math.dot([1, age], line)), 10);
  });
});

// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, critical values of Student's t; from memory
describe("Student's t against the printed table", () => {
  test.each([
    [1, 6.314, 12.706, 63.657],
    [2, 2.92, 4.303, 9.925],
    [3, 2.353, 3.182, 5.841],
    [4, 2.132, 2.776, 4.604],
    [5, 2.015, 2.571, 4.032],
    [10, 1.812, 2.228, 3.169],
    [30, 1.697, 2.042, 2.75],
    [100, 1.66, 1.984, 2.626],
  ])("has the factors for 90, 95 and 99 % at %i degrees of freedom", (freedom, ninety, ninetyFive, ninetyNine) => {
    expect(Math.abs(studentFactor(0.9, freedom) - ninety)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(studentFactor(0.95, freedom) - ninetyFive)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(studentFactor(0.99, freedom) - ninetyNine)).toBeLessThanOrEqual(0.0005);
  });

  // with one degree of freedom Student's t is the Cauchy distribution: tan(π/2 × chance), derived
  test("is Cauchy's at one degree of freedom", () =>
    expect(studentFactor(0.95, 1)).toBeCloseTo(Math.tan((Math.PI / 2) * 0.95), 5));
});

// half an inch of infill less, 42 % harder: common practice, no source; the figures are derived by hand from it
describe("the rule of thumb of half an inch", () => {
  test("has the sensitivity 0.701314 per inch, 0.027611 per millimetre", () => {
    expect(Math.abs(inUnit("depthSensitivity", halfInchRule.perDepth, "1/in") - 0.701314)).toBeLessThan(5e-5);
    expect(Math.abs(inUnit("depthSensitivity", halfInchRule.perDepth, "1/mm") - 0.027611)).toBeLessThan(5e-6);
  });

  test.each<[number, number, DepthLaw, number]>([
    [120, 0.25, "log-linear", 142.997],
    [120, 0.25, "linear", 145.2],
    [120, 0.5, "log-linear", 170.4],
    [120, 0.5, "linear", 170.4],
    [120, 1, "log-linear", 241.968],
    [120, 1, "linear", 220.8],
    [100, 0.5, "log-linear", 142],
    [100, 0.5, "linear", 142],
  ])("takes %i g after %f in, %s, to %f g", (level, loss, law, expected) =>
    expect(levelAfterDepthLoss(grams(level), inches(loss), law)).toBeCloseTo(expected, 3),
  );

  test("rises by 0.84 of the first level per inch in the linear reading", () =>
    expect(levelAfterDepthLoss(grams(1), inches(1), "linear") - 1).toBeCloseTo(0.84, 9));

  test("makes 3/8 in ×1.3008 and half an inch added ×0.7042", () => {
    expect(Math.abs(levelAfterDepthLoss(grams(1), inches(0.375), "log-linear") - 1.3008)).toBeLessThan(1e-4);
    expect(Math.abs(levelAfterDepthLoss(grams(1), inches(-0.5), "log-linear") - 0.70423)).toBeLessThan(1e-4);
  });

  test.each<[number, DepthLaw, number]>([
    [165, "log-linear", 0.45408],
    [165, "linear", 0.44643],
    [200, "log-linear", 0.72838],
    [200, "linear", 0.79365],
  ])("takes 120 g to %i g, %s, over %f in", (limit, law, expected) =>
    expect(
      Math.abs(lossToReach(grams(120), grams(limit), law, halfInchRule.perDepth) / inches(1) - expected),
    ).toBeLessThan(1e-5),
  );

  test("leaves a margin of 0.446 to 0.454 in from 120 g to 165 g", () => {
    const sensitivity = { kind: "applies", perDepth: halfInchRule.perDepth, source: halfInchRule.source } as const;
    const { figure } = depthMargin({ stated: stated(120), limit: grams(165), sensitivity });
    expect(figure.kind === "range" && figure.low / inches(1)).toBeCloseTo(0.44643, 4);
    expect(figure.kind === "range" && figure.high / inches(1)).toBeCloseTo(0.45408, 4);
  });
});
