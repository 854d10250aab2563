import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type DimensionName, dimensions, parseQuantity } from "#lib/quantity";
import { spreadLabels } from "../../app/_components/chart/spread-labels";
import { differences } from "../../app/_components/form/differences";
import { unitSuggestions } from "../../app/_components/form/unit-suggestions";

describe("differences", () => {
  test("finds none between equal documents", () =>
    fc.assert(
      fc.property(
        fc.jsonValue(),
        (document) => void expect(differences(document, structuredClone(document))).toEqual([]),
      ),
    ));

  test("names each entry in words, lists counted from 1", () =>
    expect(
      differences(
        { criteria: [{ valueFunction: { worst: "1 g" } }], name: "Field" },
        { criteria: [{ valueFunction: { worst: "2 g" } }], name: "Field" },
      ),
    ).toEqual([{ path: "criteria · 1 · value function · worst", mine: "1 g", theirs: "2 g" }]));

  test("shows a dash where one version lacks an entry", () =>
    expect(differences({ prices: ["$1"] }, { prices: [] })).toEqual([{ path: "prices · 1", mine: "$1", theirs: "–" }]));

  test("keeps the names of fields where one version has a list and the other has fields", () =>
    expect(differences({ field: ["1 ft"] }, { field: { length: "2 ft" } })).toEqual([
      { path: "field · 1", mine: "1 ft", theirs: "–" },
      { path: "field · length", mine: "–", theirs: "2 ft" },
    ]));
});

describe("unitSuggestions", () => {
  test("suggests nothing before a number is typed", () => {
    expect(unitSuggestions("", "mass")).toEqual([]);
    expect(unitSuggestions("about", "mass")).toEqual([]);
  });

  test("puts the reader's usual units first", () =>
    expect(unitSuggestions("3", "arealDensity").slice(0, 2)).toEqual(["3 lb/ft²", "3 kg/m²"]));

  test("keeps the sign of a limit and a fraction as typed", () => {
    expect(unitSuggestions("≥ 8 l", "arealDensity")[0]).toBe("≥ 8 lb/ft²");
    expect(unitSuggestions("2-1/4", "arealDensity")[0]).toBe("2-1/4 lb/ft²");
  });

  test.each(["4.85", "$4.85", "≤ 4.85", "≤ $4.85"])("sets one dollar sign before the number of “%s”", (typed) => {
    const [first] = unitSuggestions(typed, "moneyPerArea");
    expect(first).toBe(typed.startsWith("≤") ? "≤ $4.85/ft²" : "$4.85/ft²");
  });

  test("sets the sign of the project’s currency, and keeps one that is typed", () => {
    expect(unitSuggestions("12", "moneyPerArea", "EUR")[0]).toBe("€12/ft²");
    expect(unitSuggestions("≤ £12", "moneyPerArea", "EUR")[0]).toBe("≤ £12/ft²");
    expect(unitSuggestions("US$ 12", "moneyPerArea")[0]).toBe("US$ 12/ft²");
  });

  test.each(Object.keys(dimensions) as DimensionName[])("suggests only what can be read as %s", (dimension) => {
    for (const suggestion of [...unitSuggestions("3", dimension), ...unitSuggestions("3", dimension, "EUR")])
      expect(parseQuantity(dimension, suggestion), suggestion).toMatchObject({ ok: true });
  });
});

describe("spreadLabels", () => {
  const middles = fc.array(fc.double({ min: 0, max: 500, noNaN: true }), { minLength: 1, maxLength: 12 });
  const byPosition = (wanted: readonly number[]) =>
    wanted.map((position, index) => ({ position, index })).sort((one, other) => one.position - other.position);

  test("leaves labels where they are while none covers another", () =>
    expect(spreadLabels([10, 50, 30], 15)).toEqual([10, 50, 30]));

  // two labels of 10 on one spot move 5 each way, the least sum of squares; derived
  test("moves two labels on one spot the same way apart", () => expect(spreadLabels([20, 20], 10)).toEqual([15, 25]));

  test("keeps labels of unlike size half of each apart", () =>
    expect(spreadLabels([20, 20], [10, 30])).toEqual([10, 30]));

  test("keeps labels in their room", () => expect(spreadLabels([0, 0], 10, { from: 0, to: 100 })).toEqual([0, 10]));

  test("never lets one label cover another, and keeps their order", () =>
    fc.assert(
      fc.property(middles, (wanted) => {
        const placed = byPosition(wanted).map(({ index }) => spreadLabels(wanted, 12)[index] ?? Number.NaN);
        for (const [place, middle] of placed.entries())
          if (place > 0) expect(middle - (placed[place - 1] ?? Number.NaN)).toBeGreaterThanOrEqual(12 - 1e-9);
      }),
    ));
});
