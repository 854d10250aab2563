import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { failed, parseExact, succeeded } from "#lib/quantity";
import {
  type DistributionKind,
  distributionSchema,
  distributions,
  parseDistribution,
  readPlainNumber,
  seedField,
} from "#lib/sampling";

const read = (kind: DistributionKind, text: string) => parseDistribution(kind, text, readPlainNumber);
const problem = (kind: DistributionKind, text: string) => {
  const parsed = read(kind, text);
  return parsed.ok ? "read" : parsed.problem;
};

describe("parseDistribution", () => {
  test("reads figures as people write them", () => {
    const expected = { ok: true, value: { kind: "triangular", low: 4.2, likely: 4.85, high: 6 } };
    for (const text of ["4.20 / 4.85 / 6.00", "4.20/4.85/6.00", " 4.20 to 4.85 to 6.00 "])
      expect(read("triangular", text)).toEqual(expected);
    expect(read("pert", "1,200 / 1,500 / 2,000")).toMatchObject({ value: { low: 1200, likely: 1500, high: 2000 } });
    expect(read("normal", "110 ± 15")).toMatchObject({ value: { mean: 110, deviation: 15 } });
    expect(read("normal", "110 +/- 15")).toMatchObject({ value: { mean: 110, deviation: 15 } });
    expect(read("lognormal", "100 ± 25 %")).toMatchObject({ value: { mean: 100, variation: 0.25 } });
    expect(read("fixed", "4.85")).toMatchObject({ value: { value: 4.85 } });
    expect(read("uniform", "4 to 6")).toMatchObject({ value: { low: 4, high: 6 } });
    expect(read("discrete", "8: 25 %, 10: 50 %, 12: 25 %")).toMatchObject({
      value: {
        values: [
          { value: 8, chance: 0.25 },
          { value: 10, chance: 0.5 },
          { value: 12, chance: 0.25 },
        ],
      },
    });
    expect(read("discrete", "1,200: 40 %; 1,500: 60 %")).toMatchObject({
      value: { values: [{ value: 1200 }, { value: 1500 }] },
    });
  });

  test("reads figures with units that have slashes of their own", () => {
    const perArea = (text: string) => {
      const parsed = parseExact("moneyPerArea", text);
      return parsed.ok ? succeeded(parsed.value.value as number) : failed("no price");
    };
    const parsed = parseDistribution("triangular", "$4.20/ft² / $4.85/ft² / $6.00/ft²", perArea);
    expect(parsed.ok && parsed.value.high / parsed.value.low).toBeCloseTo(6 / 4.2, 10);
  });

  test("reads every example that it shows", () => {
    for (const kind of Object.keys(distributions) as DistributionKind[])
      expect(read(kind, distributions[kind].example).ok, kind).toBe(true);
  });

  test("says which figures stand in the wrong order", () => {
    expect(problem("triangular", "5 / 4 / 6")).toBe(
      "The lowest reads “5”, the most likely “4”; expected the most likely to be at least as high.",
    );
    expect(problem("pert", "4 / 7 / 6")).toBe(
      "The most likely reads “7”, the highest “6”; expected the highest to be at least as high.",
    );
    expect(problem("uniform", "7 / 6")).toBe(
      "The lowest reads “7”, the highest “6”; expected the highest to be at least as high.",
    );
  });

  test("says how many figures are expected", () => {
    expect(problem("triangular", "4 / 5")).toBe(
      "“4 / 5” has two figures; expected three figures: lowest / most likely / highest, for example “4.20 / 4.85 / 6.00”.",
    );
    expect(problem("fixed", "4 / 5")).toBe("“4 / 5” has two figures; expected one figure, for example “4.85”.");
    expect(problem("normal", "110")).toBe(
      "“110” has one figure; expected two figures: mean ± standard deviation, for example “110 ± 15”.",
    );
    expect(problem("uniform", "")).toBe(
      "“” has no figure; expected two figures: lowest / highest, for example “4.20 / 6.00”.",
    );
    expect(problem("lognormal", "1 ± 2 % ± 3")).toContain("three figures");
  });

  test("says what is amiss with a spread, a chance or a figure", () => {
    expect(problem("normal", "110 ± -3")).toBe("The standard deviation reads “-3”; expected 0 or more.");
    expect(problem("lognormal", "0 ± 25 %")).toBe(
      "The mean reads “0”; expected a figure above 0, as this one has no lower side below 0.",
    );
    expect(problem("lognormal", "100 ± 25")).toBe(
      "The spread reads “25”; expected percent of the mean, from 0 % to 500 %, for example “25 %”.",
    );
    expect(problem("discrete", "8: 25 %, 10: 50 %")).toBe("The chances add up to 75 %; expected 100 % in all.");
    expect(problem("discrete", "8, 10: 50 %")).toBe(
      "“8” has no chance; expected each value with its chance, for example “8: 25 %, 10: 50 %, 12: 25 %”.",
    );
    expect(problem("discrete", "8: 50 %, 8: 50 %")).toBe("The value 8 stands there twice; expected each value once.");
    expect(problem("discrete", "8: -50 %, 9: 150 %")).toBe(
      "The chance of “8: -50 %” is below 0 %; expected 0 % or more.",
    );
    expect(problem("triangular", "4 / five / 6")).toBe(
      "“five” was read as a figure; expected a number, for example “4.85”.",
    );
  });

  test("never throws, whatever is typed", () => {
    fc.assert(
      fc.property(fc.constantFrom(...(Object.keys(distributions) as DistributionKind[])), fc.string(), (kind, text) => {
        expect(() => read(kind, text)).not.toThrow();
      }),
    );
  });
});

describe("distributionSchema", () => {
  const schema = distributionSchema(readPlainNumber);
  test("keeps the text beside what it says", () => {
    expect(schema.parse({ kind: "uniform", figures: "4 / 6" })).toEqual({
      asEntered: "4 / 6",
      distribution: { kind: "uniform", low: 4, high: 6 },
    });
  });
  test("names the field that needs attention", () => {
    const issues = schema.safeParse({ kind: "uniform", figures: "6 / 4" }).error?.issues;
    expect(issues?.map(({ path }) => path)).toEqual([["figures"]]);
    expect(schema.safeParse({ kind: "cauchy", figures: "4" }).error?.issues[0]?.message).toBe(
      "Choose how sure the figure is: fixed, triangular, pert, uniform, normal, lognormal, discrete.",
    );
  });
});

describe("seedField", () => {
  test("reads whole numbers and says what else was read", () => {
    expect(seedField.parse("2027")).toBe(2027);
    expect(seedField.safeParse("-3").error?.issues[0]?.message).toBe(
      "The seed reads “-3”; expected a whole number of at most 15 digits, for example “2027”.",
    );
  });
});
