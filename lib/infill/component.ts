import type { WorkingInput } from "#lib/figure";
import type { InfillMaterial } from "#lib/material";
import { oncePer } from "#lib/once";
import {
  type DimensionName,
  formatInterval,
  formatReading,
  type Interval,
  intervalOf,
  likelyOf,
  notNegative,
  quotient,
  type Reading,
  type SiUnit,
  type Span,
} from "#lib/quantity";
import type { InfillComponent, InfillSystem } from "./model";

/** Mass per area in kg/m². */
export const arealDensityOf = ({ arealDensity }: InfillComponent): Span => notNegative(intervalOf(arealDensity));

/** Density of a grain in kg/m³. */
export const particleDensityOf = ({ material }: InfillComponent): Span => material.particleDensity;

/**
 * Loose density in kg/m³: as claimed, else the material's band. What "at least" leaves open ends at the density of
 * the grains, since a bed can't be denser than they are.
 */
function bulkDensityOf({ bulkDensity, material }: InfillComponent): Span {
  if (bulkDensity === null) return material.bulkDensity;
  const { low, high } = notNegative(intervalOf(bulkDensity));
  return { low, high: Number.isFinite(high) ? high : Math.max(low, material.particleDensity.high) };
}

/** Depth in m that the component takes up alone, loose as poured. */
export const bedDepthOf = (component: InfillComponent): Span =>
  quotient(arealDensityOf(component), bulkDensityOf(component));

/** The one depth in m to draw, where a depth has to be drawn. */
export function likelyBedDepth(component: InfillComponent): number {
  const { arealDensity, bulkDensity, material } = component;
  const { low, high } = material.bulkDensity;
  const density = bulkDensity === null ? (low + high) / 2 : likelyOf(bulkDensity);
  const bed = bedDepthOf(component);
  return Math.min(Math.max(likelyOf(arealDensity) / density, bed.low), bed.high);
}

/** An interval in US units with the metric ones in brackets. */
export const inBoth = <D extends DimensionName>(dimension: D, interval: Interval<SiUnit<D>>): string =>
  `${formatInterval(dimension, interval, "us")} (${formatInterval(dimension, interval, "metric")})`;

/** A reading in US units with the metric ones in brackets. */
export const readingInBoth = <D extends DimensionName>(dimension: D, reading: Reading<SiUnit<D>>): string =>
  `${formatReading(dimension, reading, "us")} (${formatReading(dimension, reading, "metric")})`;

/** Texts that several workings of one system hold. */
const arealDensityText = oncePer(({ arealDensity }: InfillComponent) => readingInBoth("arealDensity", arealDensity));
const bulkDensityText = oncePer(({ bulkDensity }: InfillMaterial) => inBoth("bulkDensity", bulkDensity));
const particleDensityText = oncePer(({ particleDensity }: InfillMaterial) => inBoth("bulkDensity", particleDensity));

/** The mass per area of each component, for a working. */
export const arealDensityInputs = ({ bid, components }: InfillSystem): readonly WorkingInput[] =>
  components.map((component) => ({
    label: `${component.material.label}: mass per area`,
    text: arealDensityText(component),
    from: { kind: "infill-component", bid, component: component.id },
  }));

/** The loose density of each component, from the bid or from the catalogue, for a working. */
export const bulkDensityInputs = ({ bid, components }: InfillSystem): readonly WorkingInput[] =>
  components.map((component) => {
    const { material, bulkDensity } = component;
    const label = `${material.label}: loose density`;
    return bulkDensity === null
      ? { label, text: bulkDensityText(material), from: { kind: "material", material: material.id } }
      : {
          label,
          text: readingInBoth("bulkDensity", bulkDensity),
          from: { kind: "infill-component", bid, component: component.id },
        };
  });

/** The density of a grain of each component, for a working. */
export const particleDensityInputs = ({ components }: InfillSystem): readonly WorkingInput[] =>
  components.map((component) => ({
    label: `${component.material.label}: particle density`,
    text: particleDensityText(component.material),
    from: { kind: "material", material: component.material.id },
  }));

/** What the loose densities rest on where the bid leaves them out or open, as assumptions in words. */
export const assumedBulkDensities = ({ components }: InfillSystem): readonly string[] =>
  components.flatMap(({ material, bulkDensity }) => {
    if (bulkDensity === null)
      return `The bid does not state the loose density of “${material.label}”, so the band of the material catalogue is used (${material.bulkDensity.source}).`;
    if (bulkDensity.kind === "at-least")
      return `A bed can't be denser than its grains, so the loose density of “${material.label}” ends at its particle density.`;
    return [];
  });
