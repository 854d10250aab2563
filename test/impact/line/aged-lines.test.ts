import { describe, expect, test } from "vitest";
import { type AgedResult, agedLines, ageInYears } from "#lib/impact";

const result = (years: number, value: number, field: string | null = null): AgedResult => ({
  age: { years },
  ...{ value, field },
  fields: 1,
});

describe("agedLines", () => {
  test("turns hours of use into years of the owner's field", () => {
    expect(ageInYears({ hours: 4500 }, 1500)).toBe(3);
    expect(ageInYears({ years: 3 }, 1500)).toBe(3);
    expect(() => ageInYears({ hours: 10 }, 0)).toThrow(RangeError);
    const inHours = [0, 1500, 3000, 6000].map(
      (hours): AgedResult => ({ ...result(0, 100 + hours / 100), age: { hours } }),
    );
    const { amount } = agedLines(inHours, 1500, 0.9);
    expect(amount.kind === "fitted" && amount.ordinary.slope).toBeCloseTo(15, 10);
  });

  test("finds growth by an even share on the logarithms", () => {
    const { share } = agedLines(
      [0, 2, 4, 6].map((years) => result(years, 100 * 1.03 ** years)),
      1500,
      0.9,
    );
    expect(share.kind === "fitted" && Math.exp(share.ordinary.slope)).toBeCloseTo(1.03, 12);
    expect(share.kind === "fitted" && Math.exp(share.robust.slope)).toBeCloseTo(1.03, 12);
  });

  test("says that two ages are too few", () => {
    const { amount } = agedLines([result(0, 110), result(0, 112), result(5, 120)], 1500, 0.9);
    expect(amount).toEqual({
      kind: "not-enough",
      distinctAges: 2,
      reason: "A line with an honest spread needs levels at 3 different ages; the bid gives 2 with both sides stated.",
    });
  });

  test("takes no logarithm of nothing", () => {
    const { amount, share } = agedLines([result(0, 0), result(2, 3), result(4, 5)], 1500, 0.9);
    expect(amount.kind).toBe("fitted");
    expect(share.kind === "not-enough" && share.reason).toBe(
      "A change by an even share each year needs values above 0.",
    );
  });

  test("says what is missing to tell fields apart", () => {
    const reasonOf = (results: readonly AgedResult[]) => {
      const { amount } = agedLines(results, 1500, 0.9);
      if (amount.kind !== "fitted") throw new Error(amount.reason);
      return amount.severalFields.kind === "fitted" ? "" : amount.severalFields.reason;
    };
    const onFields = (...names: readonly string[]) =>
      names.flatMap((field, at) => [0, 3, 5].map((years) => result(years, 110 + years + at, field)));
    expect(reasonOf(onFields("a", "b"))).toBe(
      "The spread from field to field needs at least 3 fields of the system; results stand for 2.",
    );
    expect(reasonOf([0, 2, 4, 6].map((years) => result(years, 110 + years)))).toBe(
      "4 results on 4 fields are too few to tell the change with age from the spread between fields.",
    );
    expect(reasonOf(onFields("a", "b", "c"))).toBe("");
  });
});
