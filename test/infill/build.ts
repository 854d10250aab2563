import fc from "fast-check";
import { type Figure, intervalOfFigure } from "#lib/figure";
import type { InfillComponent, InfillSystem, Placement } from "#lib/infill";
import { findMaterial, type InfillMaterial, infillMaterials } from "#lib/material";
import { type DimensionName, measured, parseQuantity, type Reading } from "#lib/quantity";

/** The reading of a text that the test knows to read well. */
export function reading<D extends DimensionName>(dimension: D, text: string) {
  const parsed = parseQuantity(dimension, text);
  if (!parsed.ok) throw new Error(`the test expected “${text}” to read`);
  return parsed.value.reading;
}

function materialOf(id: string): InfillMaterial {
  const material = findMaterial(id, []);
  if (material === undefined) throw new Error(`the catalogue lacks ${id}`);
  return material;
}

/** The same material with one particle density, for worked examples that use one. */
export function withParticleDensity(id: string, kilogramsPerCubicMetre: number): InfillMaterial {
  const value = measured("bulkDensity", kilogramsPerCubicMetre);
  return { ...materialOf(id), particleDensity: { low: value, high: value, source: "input of the example" } };
}

/** A component from texts; the material by its id or as made for the example. No bulk density where none is given. */
export function component(
  material: string | InfillMaterial,
  arealDensity: string,
  bulkDensity?: string,
): InfillComponent {
  const found = typeof material === "string" ? materialOf(material) : material;
  return {
    id: found.id,
    material: found,
    arealDensity: reading("arealDensity", arealDensity),
    bulkDensity: bulkDensity === undefined ? null : reading("bulkDensity", bulkDensity),
  };
}

export const system = (placement: Placement, ...components: readonly InfillComponent[]): InfillSystem => ({
  bid: "bid-a",
  placement,
  components,
});

/** The ends of a figure that the test expects to be there. */
export function ends<D extends DimensionName>(figure: Figure<D>) {
  const interval = intervalOfFigure(figure);
  if (interval === null) throw new Error("the test expected a figure");
  return interval;
}

/** The one value of a figure that the test expects to be known. */
export function knownValue<D extends DimensionName>(figure: Figure<D>) {
  if (figure.kind !== "known") throw new Error(`the test expected a known figure, got ${figure.kind}`);
  return figure.value;
}

export const areaOf = (squareFeet: number): Figure<"area"> => ({
  kind: "known",
  dimension: "area",
  value: measured("area", squareFeet, "ft²"),
  working: { formula: "area as measured", inputs: [], assumptions: [], source: "the test" },
});

const exactReading = (kilograms: number): Reading<"kg/m²"> => ({
  kind: "exact",
  value: measured("arealDensity", kilograms),
});

const rangeReading = ([one, other]: readonly [number, number]): Reading<"kg/m²"> => ({
  kind: "range",
  low: measured("arealDensity", Math.min(one, other)),
  high: measured("arealDensity", Math.max(one, other)),
});

const mass = fc.double({ min: 0.01, max: 60, noNaN: true });
const arealDensity = fc.oneof(mass.map(exactReading), fc.tuple(mass, mass).map(rangeReading));

/** A component of the catalogue with an exact mass or a range, whose bulk density is claimed within its band or not at all. */
export const anyComponent: fc.Arbitrary<InfillComponent> = fc
  .record({
    material: fc.constantFrom(...infillMaterials),
    arealDensity,
    within: fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
  })
  .map(({ material, arealDensity: claimed, within }) => {
    const { low, high } = material.bulkDensity;
    const bulk = within === null ? null : measured("bulkDensity", low + within * (high - low));
    return {
      id: material.id,
      material,
      arealDensity: claimed,
      bulkDensity: bulk === null ? null : ({ kind: "exact", value: bulk } as const),
    };
  });

export const anySystem = (placement: Placement): fc.Arbitrary<InfillSystem> =>
  fc.array(anyComponent, { minLength: 1, maxLength: 5 }).map((components) => system(placement, ...components));
