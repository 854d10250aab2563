import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { floatProneShare, mineralShare, submergedComponents, submergedMass, totalArealDensity } from "#lib/infill";
import { intervalOf } from "#lib/quantity";
import { anySystem, component, ends, knownValue, system } from "./build";

describe("mineralShare", () => {
  test("of 6 lb/ft² of sand with 3 lb/ft² of rubber is two thirds", () => {
    const infill = system("layered", component("silica-sand", "6 lb/ft²"), component("rubber-ambient", "3 lb/ft²"));
    expect(knownValue(mineralShare(infill))).toBeCloseTo(2 / 3, 12);
  });

  test("takes its ends from opposite ends of sand and rubber", () => {
    // 4/(4 + 3) and 6/(6 + 2) by hand; dividing the ranges would give 4/9 to 1
    const infill = system("layered", component("silica-sand", "4–6 kg/m²"), component("rubber-ambient", "2–3 kg/m²"));
    expect(ends(mineralShare(infill))).toEqual({ low: expect.closeTo(4 / 7, 12), high: expect.closeTo(0.75, 12) });
  });

  test("tends to all mineral where the sand has no upper limit", () => {
    const infill = system(
      "layered",
      component("silica-sand", "at least 4 kg/m²"),
      component("rubber-ambient", "4 kg/m²"),
    );
    expect(ends(mineralShare(infill))).toEqual({ low: 0.5, high: 1 });
  });

  test("is exactly the span of all corners of the masses", () => {
    fc.assert(
      fc.property(anySystem("blended"), (infill) => {
        const parts = infill.components.map(({ arealDensity, material }) => ({
          mass: intervalOf(arealDensity),
          share: material.mineralShare.low,
        }));
        const corners = Array.from({ length: 2 ** parts.length }, (_, corner) => {
          const masses = parts.map(({ mass }, index) => ((corner >> index) % 2 === 1 ? mass.high : mass.low));
          const mineral = masses.reduce((sum, mass, index) => sum + mass * (parts[index]?.share ?? 0), 0);
          return mineral / masses.reduce((sum, mass) => sum + mass, 0);
        });
        const { low, high } = ends(mineralShare(infill));
        expect(low).toBeCloseTo(Math.min(...corners), 12);
        expect(high).toBeCloseTo(Math.max(...corners), 12);
      }),
    );
  });

  test("is unknown where there may be no mass at all", () => {
    expect(mineralShare(system("layered", component("silica-sand", "0 kg/m²")))).toMatchObject({
      kind: "unknown",
      because: { kind: "missing-input", what: "a mass per area above 0" },
    });
  });
});

describe("floatProneShare", () => {
  test("counts cork whole, wood from none to all, sand not at all", () => {
    const [cork, wood, sand] = [
      component("cork", "1 kg/m²"),
      component("wood-granule", "1 kg/m²"),
      component("silica-sand", "2 kg/m²"),
    ];
    expect(ends(floatProneShare(system("layered", cork, wood, sand)))).toEqual({ low: 0.25, high: 0.5 });
  });

  test("says what each material does in water", () => {
    const share = floatProneShare(system("layered", component("tpe", "3 kg/m²")));
    expect(share.kind === "range" && share.working.inputs.at(-1)).toEqual({
      label: "Thermoplastic elastomer: in fresh water",
      text: "depends on the recipe: none to all of it",
      from: { kind: "material", material: "tpe" },
    });
  });
});

describe("submergedMass", () => {
  test("is less than the dry mass", () => {
    fc.assert(
      fc.property(anySystem("layered"), (infill) => {
        const [wet, dry] = [ends(submergedMass(infill)), ends(totalArealDensity(infill))];
        expect(wet.low).toBeLessThan(dry.low);
        expect(wet.high).toBeLessThan(dry.high);
      }),
    );
  });

  test("is the sum of its components", () => {
    fc.assert(
      fc.property(anySystem("layered"), (infill) => {
        const parts = submergedComponents(infill).map(({ submerged }) => ends(submerged));
        const { low, high } = ends(submergedMass(infill));
        expect(parts.reduce((sum, part) => sum + part.low, 0)).toBeCloseTo(low, 9);
        expect(parts.reduce((sum, part) => sum + part.high, 0)).toBeCloseTo(high, 9);
      }),
    );
  });

  test("spans lifting and pressing for a material that floats, then wets", () => {
    // 1 · (1 − 998/500) = −0.996 and 1 · (1 − 998/1500) = 0.33467 by hand
    expect(ends(submergedMass(system("layered", component("wood-granule", "1 kg/m²"))))).toEqual({
      low: expect.closeTo(-0.996, 9),
      high: expect.closeTo(0.33467, 5),
    });
  });

  test("is unknown where a material that may float has no upper limit", () => {
    expect(submergedMass(system("layered", component("wood-granule", "at least 1 kg/m²")))).toMatchObject({
      kind: "unknown",
      because: {
        kind: "missing-input",
        what: "a mass per area with an upper limit for each component that may float",
      },
    });
  });

  test("says that it does not show what happens in a flood", () => {
    const wet = submergedMass(system("layered", component("silica-sand", "3 lb/ft²")));
    expect(wet.kind === "known" && wet.working.assumptions.at(-1)).toBe(
      "Friction, the carpet's own mass and moving water are left out. This compares bids; it does not show that a carpet stays in place in a flood.",
    );
  });
});
