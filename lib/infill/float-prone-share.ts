import { type Figure, figureFromInterval, unknown, type WorkingInput } from "#lib/figure";
import type { InWater } from "#lib/material";
import { type Span, tagged } from "#lib/quantity";
import { noInfillClaimed } from "./bounded-figure";
import { arealDensityInputs } from "./component";
import { massShare } from "./mass-share";
import type { InfillSystem } from "./model";

/** How much of a component counts as float-prone, and how that reads in a working. */
const floating: Readonly<Record<InWater, { share: Span; text: string }>> = {
  sinks: { share: { low: 0, high: 0 }, text: "sinks: none of it" },
  floats: { share: { low: 1, high: 1 }, text: "floats: all of it" },
  "floats-then-wets": { share: { low: 0, high: 1 }, text: "floats, then wets: none to all of it" },
  depends: { share: { low: 0, high: 1 }, text: "depends on the recipe: none to all of it" },
};

const behaviourInputs = ({ components }: InfillSystem): readonly WorkingInput[] =>
  components.map(({ material }) => ({
    label: `${material.label}: in fresh water`,
    text: floating[material.inWater].text,
    from: { kind: "material", material: material.id },
  }));

/** Share of the infill's mass that floods and heavy rain can carry off because it floats in fresh water. */
export function floatProneShare(system: InfillSystem): Figure<"fraction"> {
  if (system.components.length === 0) return noInfillClaimed("fraction");
  const share = massShare(system, ({ material }) => floating[material.inWater].share);
  if (share === null) return unknown("fraction", { kind: "missing-input", what: "a mass per area above 0" });
  return figureFromInterval("fraction", tagged("fraction", share), () => ({
    formula: "float-prone share = Σ mass per area of what floats ÷ Σ mass per area",
    inputs: [...arealDensityInputs(system), ...behaviourInputs(system)],
    assumptions: [
      "Grains float where their density is below that of fresh water, 998 kg/m³.",
      "Fine dry grains that ride on the water's skin for a while are not counted.",
    ],
    source: "derived from Archimedes' principle",
  }));
}
