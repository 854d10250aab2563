import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  componentMasses,
  massInTradeUnits,
  stabilisingMass,
  totalArealDensity,
  truckLoads,
  usualPayload,
} from "#lib/infill";
import { measured } from "#lib/quantity";
import { anyComponent, anySystem, areaOf, component, ends, knownValue, system } from "./build";

describe("stabilisingMass", () => {
  test("is the sum of the masses of the components", () => {
    fc.assert(
      fc.property(anySystem("layered"), fc.integer({ min: 1, max: 200_000 }), (infill, squareFeet) => {
        const total = ends(stabilisingMass(infill, areaOf(squareFeet)));
        const parts = componentMasses(infill, areaOf(squareFeet)).map(({ mass }) => ends(mass));
        const sum = (side: "low" | "high") => parts.reduce((soFar, part) => soFar + part[side], 0);
        expect(sum("low") / total.low).toBeCloseTo(1, 9);
        expect(sum("high") / total.high).toBeCloseTo(1, 9);
      }),
    );
  });

  test("doubles with the area and grows with every component", () => {
    fc.assert(
      fc.property(anySystem("layered"), anyComponent, (infill, added) => {
        const once = ends(stabilisingMass(infill, areaOf(40_000)));
        expect(ends(stabilisingMass(infill, areaOf(80_000))).low / once.low).toBeCloseTo(2, 12);
        const more = ends(stabilisingMass(system("layered", ...infill.components, added), areaOf(40_000)));
        expect(more.low).toBeGreaterThan(once.low);
      }),
    );
  });

  test("is unknown where the area is, for the same reason", () => {
    const because = { kind: "missing-input", what: "the shape of the field" } as const;
    const infill = system("layered", component("cork", "1 lb/ft²"));
    expect(stabilisingMass(infill, { kind: "unknown", dimension: "area", because })).toEqual({
      kind: "unknown",
      dimension: "mass",
      because,
    });
  });

  test("shows area and mass per area in both systems", () => {
    const mass = stabilisingMass(system("layered", component("cork", "1 lb/ft²")), areaOf(80_000));
    expect(mass.kind === "known" && mass.working.inputs.map(({ text }) => text)).toEqual([
      "80,000 ft² (7,432 m²)",
      "1.00 lb/ft² (4.9 kg/m²)",
    ]);
  });
});

describe("totalArealDensity", () => {
  test("does not let a tolerance go below nothing", () => {
    expect(ends(totalArealDensity(system("layered", component("cork", "1 ± 2 kg/m²"))))).toEqual({ low: 0, high: 3 });
  });
});

test("massInTradeUnits knows a short ton as 2,000 lb and a tonne as 1,000 kg", () => {
  const mass = massInTradeUnits(measured("mass", 4000, "lb"));
  expect(mass.shortTons).toBeCloseTo(2, 12);
  expect(mass.tonnes).toBeCloseTo(1.81436948, 8); // 4000 × 0.45359237 kg, NIST SP 811
  expect(mass.kilograms).toBeCloseTo(1814.36948, 5);
});

describe("truckLoads", () => {
  const mass = (claimed: string) =>
    stabilisingMass(system("layered", component("silica-sand", claimed)), areaOf(80_000));

  test("gives whole loads for both ends of a range", () => {
    // 80,000 ft² × 5 and 6 lb/ft² are 200 and 240 short tons; over 22 that is 9.09 and 10.9 (by hand)
    expect(ends(truckLoads(mass("5–6 lb/ft²")))).toEqual({ low: 10, high: 11 });
  });

  test("takes the payload that the hauler states", () => {
    const payload = { value: measured("mass", 10, "short ton"), text: "10 short tons", source: "the hauler" };
    expect(knownValue(truckLoads(mass("6 lb/ft²"), payload))).toBe(24);
  });

  test("does not send a truck for the last bit that converting units leaves", () => {
    // 80,000 ft² × 6.825 lb/ft² are 273 short tons, thirteen full loads of 21
    const payload = { value: measured("mass", 21, "short ton"), text: "21 short tons", source: "the hauler" };
    expect(knownValue(truckLoads(mass("6.825 lb/ft²"), payload))).toBe(13);
  });

  test("says that the usual payload has no source", () =>
    expect(usualPayload.source).toBe("common practice, no source"));

  test("refuses a truck that carries nothing", () => {
    const nothing = { ...usualPayload, value: measured("mass", 0) };
    expect(() => truckLoads(mass("6 lb/ft²"), nothing)).toThrow(RangeError);
  });
});
