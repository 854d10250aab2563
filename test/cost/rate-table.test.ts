import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { costConventionsSchema, parseRateTable, rateForTerm, withinFederalEnergyRate } from "#lib/cost";
import { conventionsText } from "../checks/cost-example";

const tableOf = (text: string) => {
  const table = parseRateTable(text);
  if (!table.ok) throw new Error(table.problem);
  return table.value;
};
const problemOf = (text: string) => {
  const table = parseRateTable(text);
  return table.ok ? "it was read" : table.problem;
};

describe("a table of rates", () => {
  test("is read as people write it", () =>
    expect(
      ["5 years 1.9 %, 10 years 2.0 %", "5: 1.9 %; 10: 2 %", "5 yr 1.9%\n10 y 2%"].map((text) =>
        tableOf(text).rates.map(({ years, rate }) => [years, rate.value]),
      ),
    ).toEqual(
      [0, 1, 2].map(() => [
        [5, 0.019],
        [10, 0.02],
      ]),
    ));

  test("says which entry is amiss, what was read and what was expected", () => {
    expect(problemOf("")).toBe(
      "“” was read for the table of rates; expected terms with their rates, for example “5 years 1.9 %, 10 years 2.0 %, 30 years 2.3 %”.",
    );
    expect(problemOf("5 years 1.9 %, ten years 2 %")).toContain("“ten years 2 %” was read in the table of rates");
    expect(problemOf("10 years 2 %, 5 years 1.9 %")).toBe(
      "“5 years 1.9 %” follows a term as long or longer; expected the shortest term first, each once.",
    );
    expect(problemOf("10 years 2 %, 10 years 3 %")).toContain("each once");
    expect(problemOf("0 years 2 %")).toContain("expected a whole number of years from 1 to 100");
    expect(problemOf("5 years 90 %")).toContain("expected −50 % to 30 % a year");
    expect(problemOf("5 years two")).toContain("expected a share in per cent");
    expect(problemOf(Array.from({ length: 41 }, (_, at) => `${at + 1} years 2 %`).join())).toBe(
      "The table has 41 terms; expected at most 40.",
    );
  });

  test("gives its own rates at its terms, and between two terms a rate between theirs", () => {
    const anyTable = fc
      .uniqueArray(fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: -50, max: 200 })), {
        minLength: 1,
        maxLength: 8,
        selector: ([years]) => years,
      })
      .map((entries) => entries.toSorted(([one], [other]) => one - other));
    fc.assert(
      fc.property(anyTable, fc.integer({ min: 1, max: 100 }), (entries, term) => {
        const table = tableOf(entries.map(([years, tenths]) => `${years} years ${tenths / 10} %`).join(", "));
        const { rate, between } = rateForTerm(table, term);
        const values = between.map((entry) => entry.rate.value);
        expect(rate).toBeGreaterThanOrEqual(Math.min(...values));
        expect(rate).toBeLessThanOrEqual(Math.max(...values));
        for (const [years, tenths] of entries) expect(rateForTerm(table, years).rate).toBeCloseTo(tenths / 1000, 12);
        if (between.length === 1) return;
        expect(between[0].years).toBeLessThan(term);
        expect(between[1].years).toBeGreaterThan(term);
      }),
    );
  });
});

describe("conventions with a table of rates", () => {
  const table = "3 years 3.8 %, 5 years 3.9 %, 7 years 4.0 %, 10 years 4.0 %, 30 years 4.2 %";
  const read = (changes: Readonly<Record<string, string>>) =>
    costConventionsSchema.safeParse({ ...conventionsText, realRate: "", rateTable: table, ...changes });
  const rateOf = (changes: Readonly<Record<string, string>>) => {
    const { realRate } = read(changes).data ?? {};
    return realRate && [realRate.value, realRate.asEntered];
  };

  test("take the rate of the study period and say between which entries it lies", () => {
    expect(rateOf({ studyPeriod: "20 years" })).toEqual([
      expect.closeTo(0.041, 12),
      "4.1 % (between 4.0 % for 10 years and 4.2 % for 30 years)",
    ]);
    expect(rateOf({ studyPeriod: "10 years" })).toEqual([0.04, "4 % (the table’s 4.0 % for 10 years)"]);
    expect(rateOf({ studyPeriod: "40 years" })?.[1]).toBe("4.2 % (the table’s 4.2 % for 30 years)");
    expect(rateOf({ studyPeriod: "2 years" })?.[1]).toBe("3.8 % (the table’s 3.8 % for 3 years)");
  });

  test("take no rate beside it", () => {
    for (const beside of [{ realRate: "3 %" }, { nominalRate: "5 %", inflation: "2 %" }])
      expect(read(beside).error?.issues.map(({ path, message }) => [path, message])).toEqual([
        [["rateTable"], "A rate is written as well as a table of rates; expected one of them."],
      ]);
  });

  test("ask for a rate where neither stands, and read what was stored before there were tables", () => {
    expect(read({ rateTable: "" }).error?.issues[0]?.message).toBe("Write the real rate per year, for example “3 %”.");
    expect(costConventionsSchema.parse(conventionsText)).toMatchObject({ rateTable: null, rateSource: "" });
  });
});

test("the federal limits leave a rate inside of them alone", () =>
  fc.assert(
    fc.property(fc.double({ min: 0.03, max: 0.1, noNaN: true }), (rate) => {
      expect(withinFederalEnergyRate(rate)).toBe(rate);
    }),
  ));
