import { describe, expect, test } from "vitest";
import { type DimensionName, parseExact, parseQuantity, type Reading } from "#lib/quantity";

/** What a reading says as plain numbers. */
type Plain = readonly [kind: Reading["kind"], ...numbers: number[]];
const plain = (reading: Reading): Plain => {
  switch (reading.kind) {
    case "exact":
      return [reading.kind, reading.value];
    case "plus-or-minus":
      return [reading.kind, reading.value, reading.tolerance];
    case "range":
      return [reading.kind, reading.low, reading.high];
    case "at-least":
      return [reading.kind, reading.low];
    case "at-most":
      return [reading.kind, reading.high];
  }
};

/**
 * SI values worked out outside the project, in exact fractions, from the definitions 1 lb = 0.45359237 kg, 1 ft = 0.3048 m,
 * standard gravity 9.80665 m/s², 1 gal = 231 in³ (NIST SP 811), and typed here with ten digits.
 */
const spellings: readonly [DimensionName, text: string, unit: string, ...Plain][] = [
  // areal density, every way the trade writes it
  ["arealDensity", "9 lb/ft²", "lb/ft²", "exact", 43.94184873],
  ["arealDensity", "9lb/ft2", "lb/ft²", "exact", 43.94184873],
  ["arealDensity", "9 lbs/ft^2", "lb/ft²", "exact", 43.94184873],
  ["arealDensity", "9 lbs. / sq. ft.", "lb/ft²", "exact", 43.94184873],
  ["arealDensity", "9 LBS/SF", "lb/ft²", "exact", 43.94184873],
  ["arealDensity", "9 #/sf", "lb/ft²", "exact", 43.94184873],
  ["arealDensity", "9 psf", "lb/ft²", "exact", 43.94184873],
  ["arealDensity", "9 pounds per square foot", "lb/ft²", "exact", 43.94184873],
  ["arealDensity", "3.0 lb/ft²", "lb/ft²", "exact", 14.64728291],
  ["arealDensity", ".35 lb/ft²", "lb/ft²", "exact", 1.708849673],
  ["arealDensity", "40 oz/yd²", "oz/yd²", "exact", 1.356229899],
  ["arealDensity", "40 oz/sq. yd.", "oz/yd²", "exact", 1.356229899],
  ["arealDensity", "50 ounces per square yard", "oz/yd²", "exact", 1.695287374],
  ["arealDensity", "36 OSY", "oz/yd²", "exact", 1.220606909],
  ["arealDensity", "1,650 g/m²", "g/m²", "exact", 1.65],
  ["arealDensity", "1650 gsm", "g/m²", "exact", 1.65],
  ["arealDensity", "14.6 kg/sqm", "kg/m²", "exact", 14.6],
  ["arealDensity", "14.6 kg·m⁻²", "kg/m²", "exact", 14.6],
  // limits
  ["arealDensity", "≥ 9 lb/sf", "lb/ft²", "at-least", 43.94184873],
  ["arealDensity", ">= 9 psf", "lb/ft²", "at-least", 43.94184873],
  ["arealDensity", "> 9 psf", "lb/ft²", "at-least", 43.94184873],
  ["arealDensity", "min 9 psf", "lb/ft²", "at-least", 43.94184873],
  ["arealDensity", "Min. 9 psf", "lb/ft²", "at-least", 43.94184873],
  ["arealDensity", "minimum: 9 psf", "lb/ft²", "at-least", 43.94184873],
  ["arealDensity", "9 lb/ft² min.", "lb/ft²", "at-least", 43.94184873],
  ["arealDensity", "9 lb/ft² (minimum)", "lb/ft²", "at-least", 43.94184873],
  ["arealDensity", "at least 9 lb/ft²", "lb/ft²", "at-least", 43.94184873],
  ["arealDensity", "not less than 9 lb/ft²", "lb/ft²", "at-least", 43.94184873],
  ["arealDensity", "9 lb/ft² or more", "lb/ft²", "at-least", 43.94184873],
  ["impactLevel", "max 165 g", "g", "at-most", 165],
  ["impactLevel", "≤ 165", "g", "at-most", 165],
  ["impactLevel", "< 165 g", "g", "at-most", 165],
  ["impactLevel", "<165 G-max", "g", "at-most", 165],
  ["impactLevel", "not more than 165 Gmax", "g", "at-most", 165],
  ["impactLevel", "up to 165 g's", "g", "at-most", 165],
  ["impactLevel", "165 g maximum", "g", "at-most", 165],
  ["time", "min. 8 years", "year", "at-least", 252_288_000],
  // ranges
  ["arealDensity", "2–3 lb/ft²", "lb/ft²", "range", 9.764855273, 14.64728291],
  ["arealDensity", "2-3 lb/ft²", "lb/ft²", "range", 9.764855273, 14.64728291],
  ["arealDensity", "2 to 3 lb/ft²", "lb/ft²", "range", 9.764855273, 14.64728291],
  ["arealDensity", "2 lb/ft² – 3 lb/ft²", "lb/ft²", "range", 9.764855273, 14.64728291],
  ["arealDensity", "between 2 and 3 lb/ft²", "lb/ft²", "range", 9.764855273, 14.64728291],
  ["arealDensity", "from 2 to 3 lb/ft²", "lb/ft²", "range", 9.764855273, 14.64728291],
  ["arealDensity", "36 oz/yd² to 3 lb/ft²", "oz/yd²", "range", 1.220606909, 14.64728291],
  ["impactLevel", "90–140 g", "g", "range", 90, 140],
  ["length", "1-1/2 – 2-1/4 in", "in", "range", 0.0381, 0.05715],
  ["length", '0-3/8"', "in", "range", 0, 0.009525],
  ["moneyPerArea", "$2–3/ft²", "$/ft²", "range", 2152.782083, 3229.173125],
  ["moneyPerArea", "$0.35/ft² – $0.45/ft²", "$/ft²", "range", 376.7368646, 484.3759688],
  ["temperature", "70–150 °F", "°F", "range", 294.2611111, 338.7055556],
  // tolerances
  ["arealDensity", "9 lb/ft² ± 0.5", "lb/ft²", "plus-or-minus", 43.94184873, 2.441213818],
  ["arealDensity", "9 ± 0.5 lb/ft²", "lb/ft²", "plus-or-minus", 43.94184873, 2.441213818],
  ["arealDensity", "9 lb/ft² +/- 0.5 lb/ft²", "lb/ft²", "plus-or-minus", 43.94184873, 2.441213818],
  ["arealDensity", "9 lb/ft² ± 5 %", "lb/ft²", "plus-or-minus", 43.94184873, 2.197092436],
  ["arealDensity", "9 lb/ft² (+/-5%)", "lb/ft²", "plus-or-minus", 43.94184873, 2.197092436],
  ["fraction", "30 % ± 5 %", "%", "plus-or-minus", 0.3, 0.05],
  ["temperature", "70 °F ± 9 °F", "°F", "plus-or-minus", 294.2611111, 5],
  // lengths
  ["length", "2-1/4 in", "in", "exact", 0.05715],
  ["length", '2 1/4"', "in", "exact", 0.05715],
  ["length", "2.25 inches", "in", "exact", 0.05715],
  ["length", "2¼ in.", "in", "exact", 0.05715],
  ["length", '3/8"', "in", "exact", 0.009525],
  ["length", "½ in", "in", "exact", 0.0127],
  ["length", "1-1/2 in", "in", "exact", 0.0381],
  ["length", "2½″", "in", "exact", 0.0635],
  ["length", "57.15 mm", "mm", "exact", 0.05715],
  ["length", "8 mil", "mil", "exact", 0.0002032],
  ["length", "203.2 microns", "µm", "exact", 0.0002032],
  ["distance", "12' 6\"", "ft", "exact", 3.81],
  ["distance", "12'-6 1/2\"", "ft", "exact", 3.8227],
  ["distance", "12’6½”", "ft", "exact", 3.8227],
  ["distance", "5 ft 3 in", "ft", "exact", 1.6002],
  ["distance", "360 feet", "ft", "exact", 109.728],
  // numbers
  ["area", "80,000 sq ft", "ft²", "exact", 7432.2432],
  ["area", "80\u202f000 SF", "ft²", "exact", 7432.2432],
  ["area", "8,889 square yards", "yd²", "exact", 7432.336103],
  ["area", "1.84 acres", "acre", "exact", 7446.215817],
  ["linearDensity", "1.2 × 10⁻³ kg/m", "kg/m", "exact", 0.0012],
  ["linearDensity", "1.08e4 denier", "denier", "exact", 0.0012],
  ["linearDensity", "12,000 dtex", "dtex", "exact", 0.0012],
  ["count", "10,000 cycles", "", "exact", 10_000],
  ["number", "−2.5", "", "exact", -2.5],
  ["bulkDensity", "97 lbs/cu. ft.", "lb/ft³", "exact", 1553.790947],
  ["bulkDensity", "30 pcf", "lb/ft³", "exact", 480.5539012],
  ["bulkDensity", "1.55 g/cc", "g/cm³", "exact", 1550],
  // rates, forces and the rest
  ["infiltrationRate", "10 inches per hour", "in/h", "exact", 7.055555556e-5],
  ["infiltrationRate", '10"/hr', "in/h", "exact", 7.055555556e-5],
  ["infiltrationRate", "254 mm/h", "mm/h", "exact", 7.055555556e-5],
  ["infiltrationRate", "500 L/m²/h", "L/(m²·h)", "exact", 1.388888889e-4],
  ["force", "8 lbs", "lbf", "exact", 35.58577292],
  ["pressure", "15 PSI", "psi", "exact", 103_421.3594],
  ["torque", "12 in-lb", "lbf·in", "exact", 1.355817948],
  ["energy", "20 ft-lbf", "ft·lbf", "exact", 27.11635897],
  ["velocity", "20 MPH", "mph", "exact", 8.9408],
  ["temperature", "150 degrees F", "°F", "exact", 338.7055556],
  ["volume", "20 cu yd", "yd³", "exact", 15.29109716],
  ["mass", "240 tons", "short ton", "exact", 217_724.3376],
  ["yearlyUse", "1,500 hours a year", "h/year", "exact", 1500],
  ["yearlyUse", "40 hrs/wk", "h/week", "exact", 2085.714286],
  ["time", "8-year", "year", "exact", 252_288_000],
  ["fraction", "3%", "%", "exact", 0.03],
  ["fraction", "3 percent", "%", "exact", 0.03],
  ["fraction", "0", "%", "exact", 0],
  ["depthSensitivity", "0.35 per inch", "1/in", "exact", 13.77952756],
  ["depthSensitivity", "0.35 1/in", "1/in", "exact", 13.77952756],
  ["rateOfChange", "5 g/yr", "g/year", "exact", 5],
  ["countPerLength", "17.5 stitches per 10 cm", "/10 cm", "exact", 175],
  ["countPerLength", "3-1/2", "/in", "exact", 3.5 / 0.0254],
  ["yearlyArealDensity", "500 g/m² a year", "g/m²/year", "exact", 0.5],
  ["yearlyMass", "2 tonnes per year", "t/year", "exact", 2000],
  ["forcePerWidth", "1000 N/100 mm", "N/100 mm", "exact", 10_000],
  // money
  ["moneyPerArea", "$4.85/ft²", "$/ft²", "exact", 5220.496552],
  ["moneyPerArea", "$4.85/SF", "$/ft²", "exact", 5220.496552],
  ["moneyPerArea", "USD 4.85 per sq ft", "$/ft²", "exact", 5220.496552],
  ["moneyPerArea", "$4.85 per square foot", "$/ft²", "exact", 5220.496552],
  ["moneyPerArea", "4.85 $/ft²", "$/ft²", "exact", 5220.496552],
  ["moneyPerArea", "US$ 43.65 per sq. yd.", "$/yd²", "exact", 5220.496552],
  ["money", "$ 388,000", "$", "exact", 38_800_000],
  ["money", "$388,000.50", "$", "exact", 38_800_050],
  ["money", "-$5,000", "$", "exact", -500_000],
  ["moneyPerMass", "$0.12/lb", "$/lb", "exact", 26.45547146],
  ["moneyPerMass", "$240 per ton", "$/short ton", "exact", 26.45547146],
  ["moneyPerVolume", "$3.50/kgal", "$/kgal", "exact", 92.46021833],
  ["moneyPerVolume", "$60 per cubic yard", "$/yd³", "exact", 7847.703716],
  ["moneyPerTime", "$12,000 a year", "$/year", "exact", 0.03805175038],
  ["moneyPerTime", "$42.50/hr", "$/h", "exact", 1.180555556],
  ["impactLevel", "≤ 165 G max", "g", "at-most", 165],
  ["impactLevel", "165 g max", "g", "at-most", 165],
  ["area", "80,000 SQ. FT.", "ft²", "exact", 7432.2432],
  // read as the value itself; the words stay in asEntered
  ["arealDensity", "approx. 9 lb/ft²", "lb/ft²", "exact", 43.94184873],
  ["arealDensity", "~9 lb/ft²", "lb/ft²", "exact", 43.94184873],
  ["arealDensity", "ca. 9 lb/ft²", "lb/ft²", "exact", 43.94184873],
  ["arealDensity", "9 lb/ft² nominal", "lb/ft²", "exact", 43.94184873],
];

describe("parseQuantity", () => {
  test.each(spellings)("reads %s “%s”", (dimension, text, unit, kind, ...numbers) => {
    const parsed = parseQuantity(dimension, text);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problem));
    expect(parsed.value).toMatchObject({ asEntered: text.trim(), dimension, unit });
    const [gotKind, ...got] = plain(parsed.value.reading);
    expect([gotKind, got.length]).toEqual([kind, numbers.length]);
    for (const [index, number] of numbers.entries()) {
      expect(Math.abs((got[index] ?? Number.NaN) - number)).toBeLessThanOrEqual(Math.abs(number) * 1e-9);
    }
  });
  test("keeps what was typed, without the spaces around it", () =>
    expect(parseQuantity("length", "  approx. 2¼ in. ")).toMatchObject({ value: { asEntered: "approx. 2¼ in." } }));
  test("takes “5 min” for minutes where time is asked, and for a minimum where a count is asked", () => {
    expect(parseQuantity("time", "5 min")).toMatchObject({ value: { reading: { kind: "exact", value: 300 } } });
    expect(parseQuantity("count", "5 min")).toMatchObject({ value: { reading: { kind: "at-least", low: 5 } } });
  });
  test("takes a percent tolerance of a temperature as a share of the number written, not of kelvin", () =>
    expect(parseQuantity("temperature", "100 °C ± 5 %")).toMatchObject({ value: { reading: { tolerance: 5 } } }));
});

describe("parseExact", () => {
  test("gives the one number", () =>
    expect(parseExact("length", "25.4 mm")).toEqual({
      ok: true,
      value: { asEntered: "25.4 mm", dimension: "length", unit: "mm", value: 0.0254 },
    }));
});
