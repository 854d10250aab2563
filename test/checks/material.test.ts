import { describe, expect, test } from "vitest";
import { findMaterial, freshWater, grainOfMesh, sieveOpening } from "#lib/material";
import { inUnit } from "#lib/quantity";

// ASTM E11, nominal sieve openings in mm, from memory
const astmE11 = [
  [8, 2.36],
  [10, 2],
  [12, 1.7],
  [14, 1.4],
  [16, 1.18],
  [18, 1],
  [20, 0.85],
  [30, 0.6],
  [40, 0.425],
  [50, 0.3],
  [100, 0.15],
  [200, 0.075],
] as const;

describe("sieve openings of ASTM E11", () => {
  test.each(astmE11)("sieve No. %d opens %d mm", (sieve, opening) => {
    const found = sieveOpening(sieve);
    expect(found !== undefined && Math.abs(inUnit("length", found, "mm") - opening)).toBeLessThan(0.0005);
  });

  test("20–40 sand is 0.425 to 0.85 mm: the larger number is the finer sieve", () => {
    const grain = grainOfMesh(20, 40);
    expect(grain && [inUnit("length", grain.low, "mm"), inUnit("length", grain.high, "mm")]).toEqual([
      expect.closeTo(0.425, 6),
      expect.closeTo(0.85, 6),
    ]);
  });
});

describe("what floats in fresh water", () => {
  test("water has 998 kg/m³ at 20 °C, within 0.3 of the handbook's 998.2", () => {
    expect(Math.abs(freshWater.density - 998.2)).toBeLessThan(0.3);
  });

  // Archimedes: a grain floats where it is less dense than water; tyre rubber about 1150, cork about 200 kg/m³, from memory
  test("tyre rubber sinks, cork floats, and their bands hold the usual figures", () => {
    const [rubber, cork] = [findMaterial("rubber-ambient", []), findMaterial("cork", [])];
    expect([rubber?.inWater, cork?.inWater]).toEqual(["sinks", "floats"]);
    expect(rubber && rubber.particleDensity.low <= 1150 && 1150 <= rubber.particleDensity.high).toBe(true);
    expect(cork && cork.particleDensity.low <= 200 && 200 <= cork.particleDensity.high).toBe(true);
  });
});
