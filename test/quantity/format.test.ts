import { describe, expect, test } from "vitest";
import {
  type DimensionName,
  formatInterval,
  formatMoney,
  formatMoneyExact,
  formatReading,
  formatValue,
  type Interval,
  measured,
  type Reading,
  type UnitSystem,
} from "#lib/quantity";

const open = Number.POSITIVE_INFINITY;
const interval = (low: number, high: number) => ({ low, high }) as Interval<never>;

describe("formatValue", () => {
  // Values are SI, worked out from 1 lb/ft² = 4.882428 kg/m², 1 in = 0.0254 m (NIST SP 811).
  test.each<[DimensionName, number, UnitSystem, string]>([
    ["arealDensity", 43.94184873, "us", "9.00 lb/ft²"],
    ["arealDensity", 43.94184873, "metric", "43.9 kg/m²"],
    ["arealDensity", 0, "us", "0.00 lb/ft²"],
    ["length", 0.05715, "us", "2.25 in"],
    ["length", 0.05715, "metric", "57.2 mm"],
    ["area", 7432.2432, "us", "80,000 ft²"],
    ["impactLevel", 165, "us", "165 g"],
    ["impactLevel", 3, "us", "3 g"],
    ["fraction", 0.03, "us", "3 %"],
    ["fraction", -0.03, "us", "−3 %"],
    ["count", 20_000, "us", "20,000"],
    ["money", 38_800_000, "us", "$388,000"],
    ["money", -500_000, "us", "−$5,000"],
    ["moneyPerArea", 5220.496552, "us", "$4.85/ft²"],
    ["moneyPerArea", 5220.496552, "metric", "$52.20/m²"],
    ["temperature", 294.2611111, "us", "70 °F"],
    ["temperature", 233.15, "us", "−40 °F"],
    ["time", 31_536_000, "us", "1.0 year"],
    ["time", 252_288_000, "us", "8.0 years"],
    ["depthSensitivity", 13.77952756, "us", "0.350 per in"],
    ["infiltrationRate", 7.055555556e-5, "metric", "254 mm/h"],
  ])("shows %s %d in %s units as “%s”", (dimension, si, system, text) =>
    expect(formatValue(dimension, measured(dimension, si), system)).toBe(text),
  );
  test.each<[DimensionName, number, string]>([
    ["length", 0.00001, "0.00039 in"],
    ["fraction", 0.0125, "1.3 %"],
    ["fraction", 0.0004, "0.040 %"],
    ["mass", 0.1, "0.22 lb"],
    ["money", 35, "$0.35"],
  ])("keeps two digits of a small value: %s %d is “%s”", (dimension, si, text) =>
    expect(formatValue(dimension, measured(dimension, si), "us")).toBe(text),
  );
  test("shows no sign on a value that rounds to nothing", () => {
    expect(formatValue("arealDensity", measured("arealDensity", -1e-15), "us")).toBe("0.00 lb/ft²");
    expect(formatValue("impactLevel", measured("impactLevel", -0), "us")).toBe("0 g");
  });
  test("takes an infinite value for a bug", () =>
    expect(() => formatValue("mass", measured("mass", open), "us")).toThrow(RangeError));
});

describe("formatInterval", () => {
  test.each<[DimensionName, number, number, string]>([
    ["arealDensity", 41.50063491, 43.94184873, "8.50–9.00 lb/ft²"],
    ["arealDensity", 43.94184873, open, "at least 9.00 lb/ft²"],
    ["impactLevel", -open, 165, "at most 165 g"],
    ["impactLevel", -open, open, "not bounded"],
    ["impactLevel", 165, 165, "165 g"],
    ["impactLevel", 165.1, 165.2, "165.1–165.2 g"],
    ["rateOfChange", -5, 2, "−5.0 to 2.0 g/year"],
    ["moneyPerArea", 2152.782083, 3229.173125, "$2.00–$3.00/ft²"],
    ["time", 0, 31_536_000, "0.0–1.0 years"],
  ])("shows %s from %d to %d as “%s”", (dimension, low, high, text) =>
    expect(formatInterval(dimension, interval(low, high), "us")).toBe(text),
  );
  test("takes an interval that is upside down for a bug", () =>
    expect(() => formatInterval("mass", interval(2, 1), "us")).toThrow(RangeError));
});

describe("formatReading", () => {
  test.each<[DimensionName, Reading<string>["kind"], number, number, string]>([
    ["arealDensity", "plus-or-minus", 43.94184873, 2.197092436, "9.00 ± 0.45 lb/ft²"],
    ["temperature", "plus-or-minus", 294.2611111, 5, "70 ± 9 °F"],
    ["money", "plus-or-minus", 50_000, 1000, "$500 ± $10"],
  ])("keeps the tolerance of %s", (dimension, kind, value, tolerance, text) =>
    expect(formatReading(dimension, { kind, value, tolerance } as Reading<never>, "us")).toBe(text),
  );
});

describe("money", () => {
  test.each([
    [115_458_333, "$1,154,583", "$1,154,583.33"],
    [115_458_350, "$1,154,584", "$1,154,583.50"],
    [0, "$0", "$0.00"],
    [-0.4, "$0", "$0.00"],
    [-50, "−$1", "−$0.50"],
    [100.5, "$1", "$1.01"],
    [149.999, "$1", "$1.50"],
    [-115_458_333, "−$1,154,583", "−$1,154,583.33"],
  ])("%d cents is %s, to the cent %s", (cents, whole, exactly) => {
    expect(formatMoney(cents)).toBe(whole);
    expect(formatMoneyExact(cents)).toBe(exactly);
  });
  test("takes another currency by its ISO 4217 code", () => expect(formatMoneyExact(123_456, "EUR")).toBe("€1,234.56"));
  test("takes an amount that is not a number for a bug", () =>
    expect(() => formatMoney(Number.NaN)).toThrow(RangeError));
});
