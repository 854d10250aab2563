import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dimensions, formatInterval, formatValue, measured } from "#lib/quantity";
import { numberAndUnit, unitInHead } from "../../../app/project/[id]/side-by-side/_comparison/number-and-unit";

const names = Object.keys(dimensions) as (keyof typeof dimensions)[];

describe("a figure under a head that names the unit", () => {
  test.each([
    ["length", "us", "2.00 in", "in", { text: "2.00", unit: " in" }],
    ["length", "metric", "at least 50.8 mm", "mm", { text: "at least 50.8", unit: " mm" }],
    ["arealDensity", "us", "9.00 ± 0.45 lb/ft²", "lb/ft²", { text: "9.00 ± 0.45", unit: " lb/ft²" }],
    ["moneyPerArea", "us", "$4.85/ft²", "$/ft²", { text: "$4.85", unit: "/ft²" }],
    ["money", "us", "−$1,154,583", "$", { text: "−$1,154,583", unit: "" }],
    ["time", "us", "1.0 year", "years", { text: "1.0", unit: " year" }],
    ["time", "us", "8.0–10.0 years", "years", { text: "8.0–10.0", unit: " years" }],
    ["fraction", "us", "68 %", "%", { text: "68", unit: " %" }],
    ["count", "us", "12", "", { text: "12", unit: "" }],
    ["length", "us", "“tall”", "in", { text: "“tall”", unit: "" }],
  ] as const)("%s in %s units: %s", (dimension, units, figure, head, parts) => {
    expect(unitInHead(dimension, units)).toBe(head);
    expect(numberAndUnit(figure, dimension, units)).toEqual(parts);
  });

  test("number and unit together are the figure, in every dimension", () => {
    const sized = fc.double({ min: 0.001, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.constantFrom("us", "metric"),
        sized,
        sized,
        (name, units, one, other) => {
          const [low, high] = [Math.min(one, other), Math.max(one, other)].map((size) => measured(name, size));
          if (low === undefined || high === undefined) throw new RangeError("two ends");
          for (const figure of [formatValue(name, low, units), formatInterval(name, { low, high }, units)]) {
            const { text, unit } = numberAndUnit(figure, name, units);
            expect(`${text}${unit}`).toBe(figure);
            expect(text).toMatch(/\d$/);
          }
        },
      ),
    );
  });
});
