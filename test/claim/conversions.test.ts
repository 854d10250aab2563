import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Conversion,
  type ConversionInputs,
  conversionBetween,
  conversions,
  conversionsTo,
  convertReading,
  type PropertyId,
  propertyOf,
  type QuantityPropertyId,
  quantityOf,
} from "#lib/claim";
import { type In, type Interval, measured, type Reading } from "#lib/quantity";
import { claimed } from "./bid-claims";

const at = <U extends string>(value: In<U>): Interval<U> => ({ low: value, high: value });
const field: ConversionInputs = {
  "field-area": at(measured("area", 80_000, "ft²")),
  "air-temperature": at(measured("temperature", 37, "°C")),
};
const nothing: ConversionInputs = { "field-area": null, "air-temperature": null };

function conversion(from: PropertyId, to: PropertyId): Conversion {
  const found = conversionBetween(from, to);
  if (found === null) throw new Error(`no conversion from ${from} to ${to}`);
  return found;
}

/** The ends in SI of a figure of one property as the other one. */
function ends(from: QuantityPropertyId, figure: string, to: PropertyId, inputs = field): readonly number[] {
  const quantity = quantityOf(claimed({ property: from, figure }), from);
  if (quantity === null) throw new Error("no figure");
  const converted = convertReading(conversion(from, to), quantity.reading, inputs);
  if (!converted.ok) throw new Error(converted.problem.input);
  return [converted.value.low, converted.value.high];
}

describe("convertReading", () => {
  test("keeps the sides of a figure that is bounded on one side only", () => {
    expect(ends("ball-rebound", "≥ 0.6 m", "ball-rebound-share")).toEqual([0.3, Number.POSITIVE_INFINITY]);
    expect(ends("surface-temperature-peak", "≤ 57 °C", "surface-temperature-rise")[0]).toBe(Number.NEGATIVE_INFINITY);
  });

  test("is as wide as figure and input leave it open", () => {
    const hazy = {
      ...field,
      "air-temperature": { low: measured("temperature", 30, "°C"), high: measured("temperature", 35, "°C") },
    };
    const [low = 0, high = 0] = ends("surface-temperature-peak", "60–70 °C", "surface-temperature-rise", hazy);
    expect([low, high].map((kelvins) => Number(kelvins.toFixed(9)))).toEqual([25, 40]); // 60 − 35 and 70 − 30
  });

  test("names the input that it lacks", () => {
    const reading: Reading = { kind: "exact", value: measured("mass", 1000) };
    expect(convertReading(conversion("infill-total-mass", "infill-total-areal-density"), reading, nothing)).toEqual({
      ok: false,
      problem: { kind: "input-missing", input: "field-area" },
    });
  });

  test("comes back to the figure it started from", () => {
    const size = fc.double({ min: 0.01, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...conversions), size, (there, value) => {
        const back = conversion(there.to, there.from);
        const converted = convertReading(there, { kind: "exact", value: value as In<string> }, field);
        if (!converted.ok) throw new Error("inputs are given");
        const returned = convertReading(back, { kind: "exact", value: converted.value.low }, field);
        if (!returned.ok) throw new Error("inputs are given");
        expect(Math.abs(returned.value.low - value)).toBeLessThanOrEqual(1e-9 * Math.max(value, 400));
      }),
    );
  });

  test("does not depend on the units in which the figure was written", () => {
    const inches = fc.integer({ min: 12, max: 60 });
    fc.assert(
      fc.property(inches, (height) => {
        const [one = 0] = ends("ball-rebound", `${height} in`, "ball-rebound-share");
        const [other = 0] = ends("ball-rebound", `${(height * 2.54).toFixed(2)} cm`, "ball-rebound-share"); // NIST SP 811
        expect(Math.abs(one - other)).toBeLessThan(1e-12);
      }),
    );
  });
});

describe("the list of conversions", () => {
  test("leads both ways", () => {
    for (const { from, to } of conversions) expect(conversionBetween(to, from)).not.toBeNull();
  });

  test("has none for impact, where missiles and apparatus differ", () => {
    for (const { from, to } of conversions)
      for (const property of [from, to]) expect(propertyOf(property).group).not.toBe("impact");
    expect(conversionsTo("g-max")).toEqual([]);
  });

  test("states formula, proviso and source of each", () => {
    for (const { formula, provided, source } of conversions) {
      expect(formula).toMatch(/^\p{L}.* = .+$/u);
      expect(provided).toMatch(/^\p{Lu}.*\.$/u);
      expect(source).toMatch(/derived/);
    }
  });
});
