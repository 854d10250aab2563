import { type Figure, figureFromInterval } from "#lib/figure";
import { sumOf, tagged } from "#lib/quantity";
import { noInfillClaimed } from "./bounded-figure";
import { arealDensityInputs, arealDensityOf } from "./component";
import type { InfillSystem } from "./model";

/** Mass of all infill per area of field, in kg/m². */
export function totalArealDensity(system: InfillSystem): Figure<"arealDensity"> {
  if (system.components.length === 0) return noInfillClaimed("arealDensity");
  return figureFromInterval(
    "arealDensity",
    tagged("arealDensity", sumOf(system.components.map(arealDensityOf))),
    () => ({
      formula: "total mass per area = Σ mass per area of the components",
      inputs: arealDensityInputs(system),
      assumptions: [],
      source: "derived from conservation of mass",
    }),
  );
}
