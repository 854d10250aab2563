import { type Figure, figureFromInterval, known, type WorkingInput } from "#lib/figure";
import { type DisplayUnit, formatInterval, formatValue, type In, type Interval, measured } from "#lib/quantity";
import type { FieldMap } from "./field-map";

/** Infill that lies below and above a depth, over the whole field. */
export type MissingInfill = Readonly<{
  meanDepth: Figure<"length">;
  /** Where the depth is below the target, up to the target. */
  missing: Figure<"volume">;
  /** Where it is above the target: what grooming could move. */
  surplus: Figure<"volume">;
  /** To buy if nothing is moved. */
  massToBuy: Figure<"mass">;
  /** To buy if grooming brings all of the surplus to where it is missing. */
  massToBuyAfterGrooming: Figure<"mass">;
  warning: string;
}>;

export type MissingInfillQuestion = Readonly<{
  depths: FieldMap<"length">;
  target: In<"m">;
  area: In<"m²">;
  /** Of the infill to be added, loose, as it settles on the field. */
  bulkDensity: Interval<"kg/m³">;
  /** What the density is taken from. */
  densitySource: string;
}>;

const cubicYards = { unit: "yd³", decimals: 1 } as const satisfies DisplayUnit;
const cubicMetres = { unit: "m³", decimals: 1 } as const satisfies DisplayUnit;
/** How volumes of infill are shown: the trade does not count them in gallons. */
export const infillVolumeShown = { us: cubicYards, metric: cubicMetres } as const;

const fromMap = (label: string, text: string): WorkingInput => ({
  label,
  text,
  from: { kind: "figure", figure: "infill-depth-map" },
});
const lengths = (length: In<"m">) =>
  `${formatValue("length", length, "us")} (${formatValue("length", length, "metric")})`;
const volumes = (volume: In<"m³">) =>
  `${formatValue("volume", volume, cubicYards)} (${formatValue("volume", volume, cubicMetres)})`;

/**
 * Volume of missing infill by a map of depths, and the mass that fills it. Null for a map without nodes.
 * @throws RangeError if a bulk density is not above 0
 */
export function missingInfill(question: MissingInfillQuestion): MissingInfill | null {
  const { depths, target, area, bulkDensity } = question;
  const count = depths.nodes.length;
  if (count === 0) return null;
  if (!(bulkDensity.low > 0 && bulkDensity.high >= bulkDensity.low))
    throw new RangeError(`no bulk density from ${bulkDensity.low} to ${bulkDensity.high} kg/m³`);
  const meanOf = (of: (depth: number) => number) => depths.nodes.reduce((sum, { value }) => sum + of(value), 0) / count;
  const missing = measured("volume", area * meanOf((depth) => Math.max(0, target - depth)));
  const surplus = measured("volume", area * meanOf((depth) => Math.max(0, depth - target)));
  const still = measured("volume", Math.max(0, missing - surplus));
  const inputs = [
    fromMap("depths measured", `${depths.points.length}`),
    fromMap("cells of the map, each an equal part of the field", `${count}`),
    { label: "depth wanted", text: lengths(target), from: { kind: "given-here" } } as const,
    {
      label: "area",
      text: `${formatValue("area", area, "us")} (${formatValue("area", area, "metric")})`,
      from: { kind: "figure", figure: "field-area" },
    } as const,
  ];
  const assumptions = [depths.because, depths.warning];
  const volumeOf = (volume: In<"m³">, formula: string): Figure<"volume"> =>
    known("volume", volume, { formula, inputs, assumptions, source: "derived from the definition of volume" });
  return {
    meanDepth: known(
      "length",
      measured(
        "length",
        meanOf((depth) => depth),
      ),
      {
        formula: "mean depth = Σ depth of the cells ÷ number of cells",
        inputs: inputs.slice(0, 2),
        assumptions,
        source: "derived from the map",
      },
    ),
    missing: volumeOf(missing, "missing = area × mean over the cells of (depth wanted − depth), where that is above 0"),
    surplus: volumeOf(surplus, "surplus = area × mean over the cells of (depth − depth wanted), where that is above 0"),
    massToBuy: massOf(missing, question, [...assumptions, "Nothing is moved from where there is more than wanted."]),
    massToBuyAfterGrooming: massOf(still, question, [
      ...assumptions,
      `Grooming brings all of the surplus, ${volumes(surplus)}, to where infill is missing; it rarely does.`,
    ]),
    warning: depths.warning,
  };
}

function massOf(
  volume: In<"m³">,
  { bulkDensity, densitySource }: MissingInfillQuestion,
  assumptions: readonly string[],
): Figure<"mass"> {
  const mass = { low: measured("mass", volume * bulkDensity.low), high: measured("mass", volume * bulkDensity.high) };
  return figureFromInterval("mass", mass, {
    formula: "mass = volume × bulk density",
    inputs: [
      fromMap("volume", volumes(volume)),
      {
        label: "bulk density",
        text: `${formatInterval("bulkDensity", bulkDensity, "us")} (${formatInterval("bulkDensity", bulkDensity, "metric")})`,
        from: { kind: "material", material: densitySource },
      },
    ],
    assumptions,
    source: `derived from the definition of density; density: ${densitySource}`,
  });
}
