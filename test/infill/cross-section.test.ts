import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { crossSection, infillDepth } from "#lib/infill";
import { anySystem, component, ends, reading, system } from "./build";

const sand = component("silica-sand", "16 kg/m²", "1600 kg/m³");
const rubber = component("rubber-ambient", "12–14.4 kg/m²", "480 kg/m³");

describe("crossSection", () => {
  test("stacks shock layer and infill from the bottom to the top", () => {
    const section = crossSection(
      system("layered", sand, rubber),
      reading("length", "60 mm"),
      reading("length", "20 mm"),
    );
    expect(section.layers.map(({ kind, label }) => [kind, label])).toEqual([
      ["shock-layer", "Shock layer"],
      ["infill", "Silica sand, rounded"],
      ["infill", "Tyre rubber, ground at ambient temperature"],
    ]);
    expect(section.layers[2]?.thickness).toEqual({
      low: expect.closeTo(0.025, 9),
      likely: expect.closeTo(0.0275, 9),
      high: expect.closeTo(0.03, 9),
    });
    expect(section.pileHeight?.likely).toBeCloseTo(0.06, 9);
  });

  test("draws a blend as one layer that names its components", () => {
    const { layers, pileHeight } = crossSection(system("blended", sand, rubber), null, null);
    expect(layers).toMatchObject([
      {
        label: "Silica sand, rounded + Tyre rubber, ground at ambient temperature",
        components: ["silica-sand", "rubber-ambient"],
      },
    ]);
    expect(pileHeight).toBeNull();
  });

  test("leaves the upper end out where none is known", () => {
    const open = component("silica-sand", "at least 16 kg/m²", "1600 kg/m³");
    expect(crossSection(system("layered", open), null, null).layers[0]?.thickness).toEqual({
      low: expect.closeTo(0.01, 9),
      likely: expect.closeTo(0.01, 9),
      high: null,
    });
  });

  test.each(["layered", "blended"] as const)(
    "has layers that add up to the infill depth, with the likely one inside where infill is %s",
    (placement) => {
      fc.assert(
        fc.property(anySystem(placement), (infill) => {
          const { layers } = crossSection(infill, null, null);
          const { low, high } = ends(infillDepth(infill));
          expect(layers.reduce((sum, { thickness }) => sum + thickness.low, 0)).toBeCloseTo(low, 9);
          expect(layers.reduce((sum, { thickness }) => sum + (thickness.high ?? 0), 0)).toBeCloseTo(high, 9);
          for (const { thickness } of layers) {
            expect(thickness.likely).toBeGreaterThanOrEqual(thickness.low);
            expect(thickness.likely).toBeLessThanOrEqual(thickness.high ?? 0);
          }
        }),
      );
    },
  );
});
