import { unit as mathjsUnit } from "mathjs";
import { describe, expect, test } from "vitest";
import { type DimensionDefinition, type DimensionName, dimensions, inUnit, measured, parseExact } from "#lib/quantity";

const definition = (dimension: DimensionName): DimensionDefinition => dimensions[dimension];

// The printed factors are typed from memory of the table's seven digits; mathjs, further down, confirms them independently.
/** Closer than half of the last of seven printed digits can be. */
const printed = 5e-7;
const expectClose = (got: number, wanted: number, relative: number) =>
  expect(Math.abs(got - wanted) / Math.abs(wanted)).toBeLessThanOrEqual(relative);

describe("conversion factors as printed by NIST SP 811 (2008), appendix B.8", () => {
  const table: readonly [DimensionName, string, number][] = [
    ["length", "in", 2.54e-2],
    ["length", "ft", 3.048e-1],
    ["length", "yd", 9.144e-1],
    ["length", "mil", 2.54e-5],
    ["area", "ft²", 9.290304e-2],
    ["area", "yd²", 8.361274e-1],
    ["area", "ha", 1.0e4],
    ["mass", "lb", 4.535924e-1],
    ["mass", "oz", 2.834952e-2],
    ["mass", "short ton", 9.071847e2],
    ["arealDensity", "lb/ft²", 4.882428],
    ["arealDensity", "oz/yd²", 3.390575e-2],
    ["bulkDensity", "lb/ft³", 1.601846e1],
    ["linearDensity", "denier", 1.111111e-7],
    ["linearDensity", "tex", 1.0e-6],
    ["pressure", "psi", 6.894757e3],
    ["pressure", "bar", 1.0e5],
    ["temperatureDifference", "°F", 5.555556e-1],
    ["velocity", "ft/s", 3.048e-1],
    ["velocity", "km/h", 2.777778e-1],
    ["velocity", "mph", 4.4704e-1],
    ["volume", "gal", 3.785412e-3],
    ["volume", "ft³", 2.831685e-2],
    ["volume", "yd³", 7.645549e-1],
    ["time", "h", 3.6e3],
    ["time", "day", 8.64e4],
    ["time", "year", 3.1536e7],
    ["force", "lbf", 4.448222],
    ["torque", "lbf·ft", 1.355818],
    ["torque", "lbf·in", 1.129848e-1],
    ["energy", "ft·lbf", 1.355818],
  ];
  test.each(table)("%s: 1 %s", (dimension, unit, factor) => {
    expectClose(definition(dimension).units[unit]?.factor ?? Number.NaN, factor, printed);
  });
  // SP 811 prints foot per hour as 8.466667 E-05 m/s; an inch is a twelfth of it.
  test("1 in/h is a twelfth of a foot per hour", () =>
    expectClose(measured("infiltrationRate", 12, "in/h"), 8.466667e-5, printed));
  // SP 811 prints the acre of the US survey foot, 4.046873 E+03; the international one is 2 parts per million smaller per foot.
  test("1 acre agrees with the printed survey acre to 5 parts per million", () =>
    expectClose(measured("area", 1, "acre"), 4.046873e3, 5e-6));
});

describe("fixed points of temperature", () => {
  // The two scales meet at −40; water freezes at 32 °F = 0 °C = 273.15 K and, by the old definition, boils at 212 °F = 100 °C.
  test.each([
    [-40, -40],
    [32, 0],
    [212, 100],
    [98.6, 37],
  ])("%d °F is %d °C", (fahrenheit, celsius) =>
    expect(inUnit("temperature", measured("temperature", fahrenheit, "°F"), "°C")).toBeCloseTo(celsius, 9),
  );
});

/** Our unit beside the same unit in the notation of mathjs. Our year has 365 days, mathjs takes the Julian one. */
const inMathjs: Readonly<Partial<Record<DimensionName, Readonly<Record<string, string>>>>> = {
  length: { m: "m", cm: "cm", mm: "mm", in: "in", ft: "ft", yd: "yd", µm: "um", mil: "mil" },
  distance: { m: "m", ft: "ft", yd: "yd" },
  area: { "m²": "m^2", "ft²": "ft^2", "yd²": "yd^2", ha: "hectare" },
  mass: { kg: "kg", g: "g", t: "tonne", lb: "lbm", oz: "oz", "short ton": "ton" },
  arealDensity: { "kg/m²": "kg/m^2", "g/m²": "g/m^2", "lb/ft²": "lbm/ft^2", "oz/yd²": "oz/yd^2" },
  bulkDensity: { "kg/m³": "kg/m^3", "g/cm³": "g/cm^3", "lb/ft³": "lbm/ft^3" },
  linearDensity: { "kg/m": "kg/m", tex: "g/km", dtex: "dg/km" },
  pressure: { Pa: "Pa", kPa: "kPa", MPa: "MPa", psi: "psi", bar: "bar" },
  temperature: { K: "K", "°C": "degC", "°F": "degF" },
  velocity: { "m/s": "m/s", "ft/s": "ft/s", "km/h": "km/h", mph: "mi/h" },
  infiltrationRate: { "m/s": "m/s", "in/h": "in/h", "mm/h": "mm/h", "cm/h": "cm/h", "L/(m²·h)": "L/(m^2 h)" },
  volume: { "m³": "m^3", L: "L", gal: "gal", "ft³": "ft^3", "yd³": "yd^3" },
  time: { s: "s", ms: "ms", min: "minute", h: "h", day: "day" },
  force: { N: "N", kN: "kN", lbf: "lbf" },
  torque: { N·m: "N m", lbf·ft: "lbf ft", lbf·in: "lbf in" },
  energy: { J: "J", kJ: "kJ", ft·lbf: "ft lbf" },
  depthSensitivity: { "1/m": "m^-1", "1/in": "in^-1", "1/mm": "mm^-1" },
};
const mathjsSi: Readonly<Partial<Record<DimensionName, string>>> = {
  infiltrationRate: "m/s",
  arealDensity: "kg/m^2",
  bulkDensity: "kg/m^3",
  area: "m^2",
  volume: "m^3",
  torque: "N m",
  temperature: "K",
  depthSensitivity: "m^-1",
};

describe("conversion agrees with the independent library mathjs", () => {
  const pairs = Object.entries(inMathjs).flatMap(([name, units]) =>
    Object.entries(units).map(([unit, theirs]) => [name as DimensionName, unit, theirs] as const),
  );
  test.each(pairs)("%s: 7.25 %s", (dimension, unit, theirs) => {
    const parsed = parseExact(dimension, `7.25 ${unit}`);
    const ours = parsed.ok ? parsed.value.value : Number.NaN;
    const wanted = mathjsUnit(7.25, theirs).toNumber(mathjsSi[dimension] ?? definition(dimension).si);
    expectClose(ours, wanted, 1e-10); // mathjs keeps its psi with eleven digits
  });
});

describe("worked figures derived from the definitions of the units", () => {
  test("1 oz/yd² is 33.90575 g/m²", () =>
    expectClose(inUnit("arealDensity", measured("arealDensity", 1, "oz/yd²"), "g/m²"), 33.90575, 1e-6));
  test("10,800 denier is 12,000 dtex", () =>
    expectClose(inUnit("linearDensity", measured("linearDensity", 10_800, "denier"), "dtex"), 12_000, 1e-9));
  test("10 in/h is 254 mm/h", () =>
    expectClose(inUnit("infiltrationRate", measured("infiltrationRate", 10, "in/h"), "mm/h"), 254, 1e-9));
  test("8 lbf is 35.5858 N", () => expectClose(measured("force", 8, "lbf"), 35.5858, 1e-5));
  test("480,000 lb is 240 short tons and 217.7243 t", () => {
    expectClose(inUnit("mass", measured("mass", 480_000, "lb"), "short ton"), 240, 1e-6);
    expectClose(inUnit("mass", measured("mass", 480_000, "lb"), "t"), 217.7243, 1e-6);
  });
});
