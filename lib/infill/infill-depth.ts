import type { Figure, Working } from "#lib/figure";
import { blendedDepth } from "./blended-depth";
import { boundedFigure, noInfillClaimed } from "./bounded-figure";
import { arealDensityInputs, assumedBulkDensities, bulkDensityInputs, particleDensityInputs } from "./component";
import { layeredDepth } from "./layered-depth";
import type { InfillSystem } from "./model";

const asPoured = "Loose, as poured, before settling in use.";

const layeredWorking = (system: InfillSystem): Working => ({
  formula: "depth = Σ mass per area ÷ loose density",
  inputs: [...arealDensityInputs(system), ...bulkDensityInputs(system)],
  assumptions: [asPoured, "Layers keep apart.", ...assumedBulkDensities(system)],
  source: "derived from the definition of bulk density",
});

const blendedWorking = (system: InfillSystem): Working => ({
  formula:
    "from: largest of (depth of one component alone + solids of the coarser ones), fine grains filling the voids of coarse ones; to: Σ mass per area ÷ loose density",
  inputs: [...arealDensityInputs(system), ...bulkDensityInputs(system), ...particleDensityInputs(system)],
  assumptions: [
    asPoured,
    "Mixing does not loosen the bed, so the depth is no more than that of separate layers.",
    "Which grains are coarser is taken in the way that gives the least depth.",
    ...assumedBulkDensities(system),
  ],
  source:
    "lower end: C. C. Furnas 1931, limits of packing, from memory; upper end: derived from the definition of bulk density",
});

/** Depth of the infill in m. Of a mix only bounds are known, so it is a range even where every claim is exact. */
export function infillDepth(system: InfillSystem): Figure<"length"> {
  const { placement, components } = system;
  if (components.length === 0) return noInfillClaimed("length");
  const closing = "a mass per area with an upper limit for each component";
  return placement === "layered"
    ? boundedFigure("length", layeredDepth(components), () => layeredWorking(system), closing)
    : boundedFigure("length", blendedDepth(components), () => blendedWorking(system), closing);
}
