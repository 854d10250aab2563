import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { infillDepth, interlockedDepth } from "#lib/infill";
import { likelyOf } from "#lib/quantity";
import { anyComponent, anySystem, component, ends, system } from "./build";

/** Every order of a list. */
function orders<T>(list: readonly T[]): readonly (readonly T[])[] {
  if (list.length < 2) return [list];
  return list.flatMap((first, index) => orders(list.toSpliced(index, 1)).map((rest) => [first, ...rest]));
}

const bed = fc
  .tuple(fc.double({ min: 0.001, max: 1, noNaN: true }), fc.double({ min: 0.1, max: 1, noNaN: true }))
  .map(([depth, packing]) => ({ bed: depth, solid: depth * packing }));

describe("interlockedDepth", () => {
  test("is the least over every order of coarse and fine", () => {
    fc.assert(
      fc.property(fc.array(bed, { minLength: 1, maxLength: 5 }), (beds) => {
        const depths = orders(beds).map((coarseFirst) =>
          Math.max(
            ...coarseFirst.map(
              ({ bed: own }, index) => own + coarseFirst.slice(0, index).reduce((sum, { solid }) => sum + solid, 0),
            ),
          ),
        );
        expect(interlockedDepth(beds)).toBeCloseTo(Math.min(...depths), 12);
      }),
    );
  });

  test("holds all solids and each bed", () => {
    fc.assert(
      fc.property(fc.array(bed, { minLength: 1, maxLength: 6 }), (beds) => {
        const solids = beds.reduce((sum, { solid }) => sum + solid, 0);
        expect(interlockedDepth(beds)).toBeGreaterThanOrEqual(solids - 1e-12);
        for (const { bed: own } of beds) expect(interlockedDepth(beds)).toBeGreaterThanOrEqual(own);
      }),
    );
  });
});

describe("infillDepth", () => {
  test.each(["layered", "blended"] as const)("never shrinks when infill is added where infill is %s", (placement) => {
    fc.assert(
      fc.property(anySystem(placement), anyComponent, (before, added) => {
        const [less, more] = [
          ends(infillDepth(before)),
          ends(infillDepth(system(placement, ...before.components, added))),
        ];
        expect(more.low).toBeGreaterThanOrEqual(less.low - 1e-12);
        expect(more.high).toBeGreaterThanOrEqual(less.high);
      }),
    );
  });

  test("is no deeper blended than layered", () => {
    fc.assert(
      fc.property(anySystem("layered"), (layered) => {
        const [apart, mixed] = [ends(infillDepth(layered)), ends(infillDepth({ ...layered, placement: "blended" }))];
        expect(mixed.low).toBeLessThanOrEqual(apart.low);
        expect(mixed.high).toBe(apart.high);
      }),
    );
  });

  test("holds the depth of the likely masses and densities", () => {
    fc.assert(
      fc.property(anySystem("layered"), (layered) => {
        const { low, high } = ends(infillDepth(layered));
        const likely = layered.components.reduce((sum, { arealDensity, bulkDensity, material }) => {
          const density = bulkDensity === null ? material.bulkDensity.low : likelyOf(bulkDensity);
          return sum + likelyOf(arealDensity) / density;
        }, 0);
        expect(likely).toBeGreaterThanOrEqual(low - 1e-9);
        expect(likely).toBeLessThanOrEqual(high + 1e-9);
      }),
    );
  });

  test.each(["layered", "blended"] as const)(
    "does not depend on the order of the components where infill is %s",
    (placement) => {
      fc.assert(
        fc.property(anySystem(placement), (forth) => {
          const back = { ...forth, components: forth.components.toReversed() };
          const [one, other] = [ends(infillDepth(forth)), ends(infillDepth(back))];
          expect(other.low).toBeCloseTo(one.low, 12);
          expect(other.high).toBeCloseTo(one.high, 12);
        }),
      );
    },
  );

  test("does not depend on the unit system", () => {
    // 1 lb/ft² = 4.882428 kg/m² and 1 lb/ft³ = 16.01846 kg/m³ (NIST SP 811)
    const us = ends(infillDepth(system("layered", component("rubber-ambient", "2 lb/ft²", "30 lb/ft³"))));
    const metric = ends(
      infillDepth(system("layered", component("rubber-ambient", "9.764856 kg/m²", "480.5538 kg/m³"))),
    );
    expect(us.low).toBeCloseTo(metric.low, 7);
  });

  test("uses the material's band where the bid gives no loose density, and says so", () => {
    const depth = infillDepth(system("layered", component("silica-sand", "16 kg/m²")));
    // 16/1600 and 16/1450 by hand
    expect(ends(depth)).toEqual({ low: expect.closeTo(0.01, 9), high: expect.closeTo(0.0110345, 7) });
    expect(depth.kind === "range" && depth.working).toMatchObject({
      formula: "depth = Σ mass per area ÷ loose density",
      inputs: [
        {
          label: "Silica sand, rounded: mass per area",
          text: "3.28 lb/ft² (16.0 kg/m²)",
          from: { kind: "infill-component", bid: "bid-a", component: "silica-sand" },
        },
        {
          label: "Silica sand, rounded: loose density",
          text: "90.5–99.9 lb/ft³ (1,450–1,600 kg/m³)",
          from: { kind: "material", material: "silica-sand" },
        },
      ],
    });
    expect(depth.kind === "range" && depth.working.assumptions.join(" ")).toContain(
      "The bid does not state the loose density of “Silica sand, rounded”, so the band of the material catalogue is used",
    );
  });

  test("ends a loose density of “at least” at the density of the grains", () => {
    const depth = infillDepth(system("layered", component("rubber-ambient", "12 kg/m²", "at least 480 kg/m³")));
    // 12/1200 and 12/480 by hand
    expect(ends(depth)).toEqual({ low: expect.closeTo(0.01, 9), high: expect.closeTo(0.025, 9) });
  });

  test("is open above where the mass is", () => {
    const depth = infillDepth(system("layered", component("silica-sand", "at least 16 kg/m²", "1600 kg/m³")));
    expect(depth).toMatchObject({ kind: "at-least", low: expect.closeTo(0.01, 9) });
  });

  test("is not claimed where no component is", () => {
    expect(infillDepth(system("layered"))).toEqual({
      kind: "unknown",
      dimension: "length",
      because: { kind: "not-claimed", what: "the components of the infill" },
    });
  });
});
