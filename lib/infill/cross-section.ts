import { type In, intervalOf, likelyOf, measured, notNegative, type Reading, type Span } from "#lib/quantity";
import { blendedDepth } from "./blended-depth";
import { bedDepthOf, likelyBedDepth } from "./component";
import type { InfillSystem } from "./model";

/** A thickness to draw, in m. `high` is null where no upper limit is known. */
export type Thickness = Readonly<{ low: In<"m">; likely: In<"m">; high: In<"m"> | null }>;

/** One band of the drawing. A blended infill is one band that names its components. */
export type CrossSectionLayer = Readonly<{
  kind: "shock-layer" | "infill";
  label: string;
  components: readonly string[];
  thickness: Thickness;
}>;

/** What to draw: layers from the bottom to the top, and how high the pile stands from the foot of the infill. */
export type CrossSection = Readonly<{ layers: readonly CrossSectionLayer[]; pileHeight: Thickness | null }>;

const thickness = ({ low, high }: Span, likely: number): Thickness => ({
  low: measured("length", low),
  likely: measured("length", likely),
  high: Number.isFinite(high) ? measured("length", high) : null,
});

const claimedThickness = (reading: Reading<"m">): Thickness =>
  thickness(notNegative(intervalOf(reading)), Math.max(0, likelyOf(reading)));

function infillLayers({ placement, components }: InfillSystem): readonly CrossSectionLayer[] {
  if (components.length === 0) return [];
  if (placement === "layered")
    return components.map((component) => ({
      kind: "infill",
      label: component.material.label,
      components: [component.id],
      thickness: thickness(bedDepthOf(component), likelyBedDepth(component)),
    }));
  const depth = blendedDepth(components);
  const likely = Number.isFinite(depth.high) ? (depth.low + depth.high) / 2 : depth.low;
  const label = components.map(({ material }) => material.label).join(" + ");
  return [{ kind: "infill", label, components: components.map(({ id }) => id), thickness: thickness(depth, likely) }];
}

/** The build-up of a bid as plain data for a drawing; null stands for a length that the bid does not state. */
export function crossSection(
  system: InfillSystem,
  pileHeight: Reading<"m"> | null,
  shockLayer: Reading<"m"> | null,
): CrossSection {
  const under: readonly CrossSectionLayer[] =
    shockLayer === null
      ? []
      : [{ kind: "shock-layer", label: "Shock layer", components: [], thickness: claimedThickness(shockLayer) }];
  return {
    layers: [...under, ...infillLayers(system)],
    pileHeight: pileHeight === null ? null : claimedThickness(pileHeight),
  };
}
