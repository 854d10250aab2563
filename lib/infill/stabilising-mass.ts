import { type Figure, intervalOfFigure, unknown } from "#lib/figure";
import { type In, inUnit } from "#lib/quantity";
import { boundedFigure } from "./bounded-figure";
import { inBoth } from "./component";
import type { InfillSystem } from "./model";
import { product } from "./span";
import { totalArealDensity } from "./total-areal-density";

/** Mass in kg of something spread over an area: infill placed, lost or topped up. */
export function massOverArea(arealDensity: Figure<"arealDensity">, area: Figure<"area">): Figure<"mass"> {
  if (arealDensity.kind === "unknown") return unknown("mass", arealDensity.because);
  if (area.kind === "unknown") return unknown("mass", area.because);
  const [perArea, over] = [intervalOfFigure(arealDensity), intervalOfFigure(area)];
  if (perArea === null || over === null)
    return unknown("mass", { kind: "missing-input", what: "mass per area and area" });
  const working = {
    formula: "mass = area × mass per area",
    inputs: [
      { label: "area", text: inBoth("area", over), from: { kind: "figure", figure: "field-area" } },
      {
        label: "mass per area",
        text: inBoth("arealDensity", perArea),
        from: { kind: "figure", figure: "total-areal-density" },
      },
    ],
    assumptions: ["The mass is spread evenly over the whole area."],
    source: "derived from the definition of mass per area",
  } as const;
  return boundedFigure("mass", product(perArea, over), working, "a mass per area with an upper or a lower limit");
}

/** Mass in kg of all infill on the field. It holds the carpet down, and it has to be hauled, topped up and disposed of. */
export const stabilisingMass = (system: InfillSystem, area: Figure<"area">): Figure<"mass"> =>
  massOverArea(totalArealDensity(system), area);

/** Mass in kg of each component on the field, in the order of the components. */
export const componentMasses = (system: InfillSystem, area: Figure<"area">) =>
  system.components.map((component) => ({
    id: component.id,
    label: component.material.label,
    mass: stabilisingMass({ ...system, components: [component] }, area),
  }));

/** One mass in the units that scales, haulers and disposal sites use. A short ton is 2,000 lb, a tonne 1,000 kg. */
export const massInTradeUnits = (mass: In<"kg">) => ({
  kilograms: inUnit("mass", mass, "kg"),
  pounds: inUnit("mass", mass, "lb"),
  shortTons: inUnit("mass", mass, "short ton"),
  tonnes: inUnit("mass", mass, "t"),
});
