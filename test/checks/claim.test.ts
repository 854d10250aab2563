import { describe, expect, test } from "vitest";
import {
  claimSchema,
  comparability,
  conversionBetween,
  convertReading,
  dropEnergy,
  familyOf,
  impactSpeed,
  type MethodId,
  matchMethod,
  methodOf,
  type PropertyId,
  propertyOf,
  type QuantityPropertyId,
  quantityOf,
} from "#lib/claim";
import { inUnit, measured } from "#lib/quantity";

const dropOf = (method: MethodId) => familyOf(methodOf(method).measuresLike).drop;

/** The plausible band of a property, as plain numbers in SI. */
function bandOf(id: PropertyId): Readonly<{ low: number; high: number }> {
  const property = propertyOf(id);
  if (property.kind !== "quantity" || property.plausible === null) throw new Error(`${id} has no band`);
  return property.plausible;
}

describe("impact devices against the trade's figures", () => {
  // Penn State University, description of test methods: missile A of ASTM F355 weighs 20 lb (9.1 kg), falls 24 in (610 mm);
  // the hammer of ASTM F1702 weighs 5 lb (2.25 kg), falls 18 in (455 mm). Missile E, 4.6 kg: from memory. 1.3 m: World Rugby.
  // Energies and speeds worked by hand from m·g·h and √(2·g·h) with g = 9.80665 m/s².
  test.each([
    ["f355-a", 9.1, 0.61, 54.44, 3.459],
    ["f1936", 9.1, 0.61, 54.44, 3.459],
    ["f1702-clegg", 2.25, 0.455, 10.04, 2.987],
    ["f3146", 4.6, 1.3, 58.64, 5.049],
  ] as const)("%s drops %d kg from %d m: %d J at %d m/s", (method, mass, height, energy, speed) => {
    const drop = dropOf(method);
    expect(drop?.mass).toBe(mass);
    expect(drop?.height).toBe(height);
    if (drop === null || drop.height === null) throw new Error(`${method} has no drop height`);
    expect(Math.abs(dropEnergy(drop.mass, drop.height) - energy)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(impactSpeed(drop.height) - speed)).toBeLessThanOrEqual(0.0005);
  });

  // NIST SP 811 (2008): 1 lb = 0.45359237 kg, 1 in = 25.4 mm, both exact. The trade rounds both systems on its own.
  test.each([
    ["f355-a", 20, 24],
    ["f1702-clegg", 5, 18],
  ] as const)("%s: its US figures are the metric ones within one in a hundred", (method, pounds, inches) => {
    const drop = dropOf(method);
    expect(drop?.massText.startsWith(`${pounds} lb`)).toBe(true);
    expect(drop?.heightText.startsWith(`${inches} in`)).toBe(true);
    expect(Math.abs((drop?.mass ?? 0) / (pounds * 0.45359237) - 1)).toBeLessThan(0.01);
    expect(Math.abs((drop?.height ?? 0) / (inches * 0.0254) - 1)).toBeLessThan(0.01);
  });

  // Closed form: 1.3 m and 0.61 m, speeds to six digits, worked with √(2·9.80665·h)
  test.each([
    [0.61, 3.45892],
    [1.3, 5.04948],
  ])("a fall of %d m ends at %d m/s", (height, speed) => {
    expect(Math.abs(impactSpeed(measured("length", height)) - speed)).toBeLessThanOrEqual(5e-6);
  });
});

describe("which figures compare", () => {
  // ASTM F1702, scope: results are not comparable with those of another mass, geometry, drop height or method
  test.each(["f355-a", "f1936", "f355-e", "f1292", "f3146"] as const)(
    "ASTM F1702 does not compare with %s",
    (method) => {
      expect(comparability("g-max", method, "f1702-clegg").kind).toBe("not-comparable");
      expect(comparability("warranty-hardness-limit", "f355-a", "f1702-clegg").kind).toBe("not-comparable");
    },
  );

  // ASTM F355: missile A is flat, missile E hemispherical (extract of F355-10a)
  test("missile A does not compare with missile E", () => {
    expect(comparability("g-max", "f355-a", "f355-e").kind).toBe("not-comparable");
    expect(comparability("g-max", "f1936", "f3146").kind).toBe("not-comparable");
  });

  // ASTM F1936, abstract: the field is tested with missile A of F355
  test("ASTM F1936 compares with missile A of ASTM F355", () => {
    expect(comparability("g-max", "f1936", "f355-a").kind).toBe("comparable");
  });

  // derived: a critical fall height is the height at which the head injury criterion reaches 1000, so G-max by missile A gives none
  test("a report by missile A supports no critical fall height", () => {
    expect(comparability("critical-fall-height", "f1292", "f355-a").kind).toBe("not-comparable");
    expect(comparability("critical-fall-height", "f1292", "f1936").kind).toBe("not-comparable");
  });

  // EN 71-3 category III limits lead to 23 mg/kg, ASTM F963 to 90 mg/kg soluble: different extractions, different figures
  test("total lead, lead soluble in acid and migrating lead stay apart", () => {
    const methods = ["f2765", "f3188", "en-71-3"] as const;
    for (const wanted of methods)
      for (const got of methods)
        expect(comparability("lead-content", wanted, got).kind).toBe(wanted === got ? "comparable" : "not-comparable");
  });

  // ASTM D4491 is a permittivity test of a geotextile: a component, never the system
  test("a test of the carpet alone supports no figure for the system", () => {
    expect(comparability("system-infiltration", "f2898", "d4491").kind).toBe("not-comparable");
  });
});

/** A property and the span of figures in use, in SI, with where they come from. */
type Used = [property: PropertyId, low: number, high: number, source: string];

describe("plausible bands hold the figures that are in use", () => {
  // Each figure in the unit of its source, turned into SI with the factors of NIST SP 811 written out here.
  const ozPerYd2 = 0.0339057; // kg/m²
  const used: readonly Used[] = [
    ["pile-height", 0.044, 0.064, "common practice, no source: 44–64 mm"],
    ["pile-mass", 36 * ozPerYd2, 50 * ozPerYd2, "common practice, no source: 36–50 oz/yd²"],
    ["carpet-total-mass", 77 * ozPerYd2, 77 * ozPerYd2, "a published product sheet: 50 + 27 oz/yd²"],
    ["yarn-linear-density", 8000 / 9e6, 15_000 / 9e6, "common practice, no source: 8,000–15,000 denier"],
    ["tuft-bind", 6.8 * 4.448222, 8 * 4.448222, "trade guidelines, from memory: 6.8 and 8 lbf"],
    ["shock-absorption", 0.55, 0.7, "FIFA Quality: 55–70 %"],
    ["vertical-deformation", 0.004, 0.011, "FIFA Quality: 4–11 mm"],
    ["rotational-resistance", 25, 50, "FIFA Quality: 25–50 N·m"],
    ["ball-rebound", 0.6, 1, "FIFA Quality: 0.60–1.00 m"],
    ["ball-roll", 4, 12, "FIFA Quality, initial and retest, the latter from memory: 4–12 m"],
    ["skin-friction", 0.35, 0.75, "FIFA, from memory: 0.35–0.75"],
    ["critical-fall-height", 1.3, 1.3, "World Rugby: at least 1.3 m"],
    ["head-injury-criterion", 1000, 1000, "ASTM F1292 and EN 1177, from memory: 1000"],
    ["g-max", 110, 200, "a Californian city specification: 110; ASTM F1936: below 200"],
    ["infill-depth", 0.035, 0.036, "Penn State University, 2012 survey: 35 and 36 mm"],
    ["infill-total-areal-density", 14.647, 43.942, "common practice, no source: 3–9 lb/ft²"],
    ["infill-total-mass", 217_724, 217_724, "derived: 6 lb/ft² on 80,000 ft²"],
    ["system-infiltration", 254e-3 / 3600, 254e-3 / 3600, "a Californian city specification: 10 in/h"],
    ["surface-temperature-rise", 62 / 1.8, 62 / 1.8, "Nevada study in trade press: 62 °F above air"],
    ["surface-temperature-peak", 273.15 + 93, 273.15 + 93, "Penn State University: 93 °C"],
    ["warranty-years", 8 * 365 * 86_400, 8 * 365 * 86_400, "common in trade press: 8 years"],
    ["shock-layer-thickness", 0.008, 0.035, "common practice, no source: 8–35 mm"],
    ["shock-layer-density", 30, 700, "common practice, no source: 30–700 kg/m³"],
    ["lead-content", 23e-6, 300e-6, "EN 71-3: 23 mg/kg; ASTM F2765, 2009: 300 mg/kg"],
    ["pah-sum", 20e-6, 20e-6, "Commission Regulation (EU) 2021/1199: 20 mg/kg"],
  ];

  test.each(used)("%s: %d to %d (%s)", (property, low, high) => {
    const band = bandOf(property);
    expect(band.low).toBeLessThan(low);
    expect(band.high).toBeGreaterThan(high);
  });

  // the trade's slips: a depth in mm read as inches, a pile mass in g/m² read as oz/yd²
  test("a slip of unit falls outside", () => {
    expect(measured("length", 45, "in")).toBeGreaterThan(bandOf("infill-depth").high);
    expect(measured("arealDensity", 1400, "oz/yd²")).toBeGreaterThan(bandOf("pile-mass").high);
    expect(inUnit("length", measured("length", bandOf("pile-height").high), "mm")).toBeCloseTo(80, 9);
  });
});

describe("designations", () => {
  // as the standards bodies write them, with and without the body's name
  test.each([
    ["ASTM F1936", "f1936"],
    ["F1936", "f1936"],
    ["astm f355-a", "f355-a"],
    ["ASTM F355, missile A", "f355-a"],
    ["EN 12616", "en-12616"],
    ["ASTM D1335", "d1335"],
    ["", "not-stated"],
    ["Not stated", "not-stated"],
  ])("“%s” is read as %s", (text, id) => expect(matchMethod(text)).toBe(id));

  test("a designation that names no missile is not guessed", () => expect(matchMethod("ASTM F355")).toBeNull());
});

describe("conversions against worked figures", () => {
  const ends = (from: QuantityPropertyId, figure: string, to: QuantityPropertyId): number => {
    const claim = claimSchema.parse({ id: "a", property: from, figure, evidence: "stated" });
    const [quantity, conversion] = [quantityOf(claim, from), conversionBetween(from, to)];
    if (quantity === null || conversion === null) throw new Error(`${from} does not lead to ${to}`);
    const area = measured("area", 80_000, "ft²");
    const air = measured("temperature", 37, "°C");
    const inputs = { "field-area": { low: area, high: area }, "air-temperature": { low: air, high: air } };
    const converted = convertReading(conversion, quantity.reading, inputs);
    if (!converted.ok) throw new Error(converted.problem.input);
    return converted.value.low;
  };

  // NIST SP 811 (2008): 1 lb = 0.45359237 kg, 1 ft = 0.3048 m, short ton of 2000 lb. 6 lb/ft² is 29.2946 kg/m² to six digits.
  test("240 short tons over 80,000 ft² are 6 lb/ft²", () => {
    expect(
      Math.abs(ends("infill-total-mass", "240 short tons", "infill-total-areal-density") - 29.2946),
    ).toBeLessThanOrEqual(5e-5);
    expect(Math.abs(ends("infill-total-areal-density", "6 lb/ft²", "infill-total-mass") - 217_724)).toBeLessThanOrEqual(
      0.5,
    );
  });

  // European Union committee benchmark as quoted in trade press, 7 g/m² a year; over 80,000 ft² that is 52.03 kg a year
  test("7 g/m² a year over 80,000 ft² are 52.03 kg a year", () => {
    expect(Math.abs(ends("infill-top-up", "7 g/m² per year", "infill-top-up-mass") - 52.03)).toBeLessThanOrEqual(0.005);
  });

  // Penn State University: infill turf peaked at 93 °C (199 °F) in air of 37 °C; the rounded °F figure is within half a degree
  test("a peak of 93 °C in air of 37 °C is a rise of 56 K", () => {
    expect(Math.abs(ends("surface-temperature-peak", "93 °C", "surface-temperature-rise") - 56)).toBeLessThanOrEqual(
      1e-9,
    );
    expect(Math.abs(ends("surface-temperature-peak", "199 °F", "surface-temperature-rise") - 56)).toBeLessThanOrEqual(
      0.5,
    );
  });

  // World Rugby and FIFA football ranges from memory: 0.6 m to 1.0 m after a fall of 2 m, which is 30 % to 50 %
  test.each([
    ["0.6 m", 0.3],
    ["1.0 m", 0.5],
  ])("a rebound of %s from 2 m is a share of %d", (height, share) => {
    expect(ends("ball-rebound", height, "ball-rebound-share")).toBe(share);
  });
});
