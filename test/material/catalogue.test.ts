import { describe, expect, test } from "vitest";
import {
  findMaterial,
  freshWater,
  grainOfMesh,
  type InfillMaterial,
  type InWater,
  infillMaterials,
  type Sourced,
  shockLayerKinds,
} from "#lib/material";
import { inUnit } from "#lib/quantity";

/** Whether a source is honest about being no citation: nothing here was read in a publication. */
const honest = (source: string) => /from memory|common practice, no source/.test(source);

const inOrder = ({ low, high, source }: Sourced<string>) => low > 0 && low <= high && honest(source);

const waterRule: Readonly<Record<InWater, (density: Sourced<"kg/m³">) => boolean>> = {
  sinks: ({ low }) => low > freshWater.density,
  floats: ({ high }) => high < freshWater.density,
  "floats-then-wets": ({ low, high }) => low < freshWater.density && high > freshWater.density,
  depends: ({ low, high }) => low < freshWater.density && high > freshWater.density,
};

const meshOf = ({ usualGrain }: InfillMaterial) =>
  usualGrain === null || usualGrain.mesh === "as millimetres" ? null : usualGrain.mesh.split("–").map(Number);

describe("infillMaterials", () => {
  test.each(infillMaterials.map((material) => [material.label, material] as const))(
    "%s has bands in order, each with its source",
    (_, material) => {
      expect(inOrder(material.bulkDensity)).toBe(true);
      expect(inOrder(material.particleDensity)).toBe(true);
      expect(material.usualGrain === null || inOrder(material.usualGrain)).toBe(true);
      expect(honest(material.source)).toBe(true);
    },
  );

  test("a loose bed is lighter than its grains", () => {
    for (const { bulkDensity, particleDensity } of infillMaterials)
      expect(bulkDensity.high).toBeLessThan(particleDensity.high);
  });

  test("behaviour in water follows from the particle density", () => {
    for (const { id, inWater, particleDensity } of infillMaterials)
      expect([id, waterRule[inWater](particleDensity)]).toEqual([id, true]);
  });

  test("grains named by mesh lie between the openings of those sieves", () => {
    const named = infillMaterials.filter((material) => meshOf(material) !== null);
    expect(named.length).toBeGreaterThan(4);
    for (const material of named) {
      const [coarse = 0, fine = 0] = meshOf(material) ?? [];
      expect(coarse).toBeLessThan(fine);
      const { low, high } = material.usualGrain ?? { low: 0, high: 0 };
      expect(grainOfMesh(coarse, fine)).toEqual({ low, high });
    }
  });

  test("ids are used once and none looks like an owner's own", () => {
    const ids = infillMaterials.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => id.startsWith("own-"))).toEqual([]);
  });
});

describe("findMaterial", () => {
  test("looks in the catalogue and among the owner's own", () => {
    const [first] = infillMaterials;
    if (first === undefined) throw new Error("the catalogue is empty");
    const own = { ...first, id: "own-sand", label: "Sand of the district" };
    expect(findMaterial("cork", [])?.label).toBe("Cork");
    expect(findMaterial("own-sand", [own])).toBe(own);
    expect(findMaterial("own-sand", [])).toBeUndefined();
  });
});

describe("shockLayerKinds", () => {
  test.each(shockLayerKinds.map((kind) => [kind.label, kind] as const))("%s has bands in order", (_, kind) => {
    expect([kind.thickness, kind.density, kind.life].every(inOrder)).toBe(true);
    expect(inUnit("length", kind.thickness.high, "mm")).toBeLessThanOrEqual(35);
  });
});
