import { type Figure, figureFromInterval, unknown, type WorkingInput } from "#lib/figure";
import { formatInterval, tagged } from "#lib/quantity";
import { noInfillClaimed } from "./bounded-figure";
import { arealDensityInputs } from "./component";
import { massShare } from "./mass-share";
import type { InfillSystem } from "./model";

const shareInputs = ({ components }: InfillSystem): readonly WorkingInput[] =>
  components.map(({ material }) => ({
    label: `${material.label}: mineral share`,
    text: formatInterval("fraction", material.mineralShare, "us"),
    from: { kind: "material", material: material.id },
  }));

/** Share of the infill's mass that is mineral granules, such as sand. */
export function mineralShare(system: InfillSystem): Figure<"fraction"> {
  if (system.components.length === 0) return noInfillClaimed("fraction");
  const share = massShare(system, ({ material }) => material.mineralShare);
  if (share === null) return unknown("fraction", { kind: "missing-input", what: "a mass per area above 0" });
  return figureFromInterval("fraction", tagged("fraction", share), () => ({
    formula: "mineral share = Σ (mass per area × mineral share of the component) ÷ Σ mass per area",
    inputs: [...arealDensityInputs(system), ...shareInputs(system)],
    assumptions: [
      "Where masses are ranges, the ends are those of the combination that gives the lowest and the highest share.",
    ],
    source: "derived from conservation of mass",
  }));
}
