import type { Figure, Working } from "#lib/figure";
import { type In, type Interval, inUnit, product } from "#lib/quantity";
import { boundedFigure, derivedFrom } from "./bounded-figure";
import { inBoth } from "./component";
import type { InfillSystem } from "./model";
import { totalArealDensity } from "./total-areal-density";

const closing = "a mass per area with an upper or a lower limit";

const workingOf = (perArea: Interval<"kg/m²">, area: Interval<"m²">): Working => ({
  formula: "mass = area × mass per area",
  inputs: [
    { label: "area", text: inBoth("area", area), from: { kind: "figure", figure: "field-area" } },
    {
      label: "mass per area",
      text: inBoth("arealDensity", perArea),
      from: { kind: "figure", figure: "total-areal-density" },
    },
  ],
  assumptions: ["The mass is spread evenly over the whole area."],
  source: "derived from the definition of mass per area",
});

/** Mass in kg of something spread over an area: infill placed, lost or topped up. */
export const massOverArea = (arealDensity: Figure<"arealDensity">, area: Figure<"area">): Figure<"mass"> =>
  derivedFrom(arealDensity, "mass", (perArea) =>
    derivedFrom(area, "mass", (over) =>
      boundedFigure("mass", product(perArea, over), () => workingOf(perArea, over), closing),
    ),
  );

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
