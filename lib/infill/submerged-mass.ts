import type { Figure, Working } from "#lib/figure";
import { freshWater } from "#lib/material";
import { product, type Span, sumOf } from "#lib/quantity";
import { boundedFigure, noInfillClaimed } from "./bounded-figure";
import { arealDensityInputs, arealDensityOf, particleDensityInputs, particleDensityOf } from "./component";
import type { InfillComponent, InfillSystem } from "./model";

/** What is left of a grain's weight under water, as a share: 1 − ρ_water/ρ_particle, which grows with ρ_particle. */
function remainingShare(component: InfillComponent): Span {
  const { low, high } = particleDensityOf(component);
  return { low: 1 - freshWater.density / low, high: 1 - freshWater.density / high };
}

const submergedOf = (component: InfillComponent): Span => product(arealDensityOf(component), remainingShare(component));

const workingOf = (system: InfillSystem): Working => ({
  formula: "submerged mass per area = Σ mass per area × (1 − water density ÷ particle density)",
  inputs: [
    ...arealDensityInputs(system),
    ...particleDensityInputs(system),
    { label: "water density", text: freshWater.text, from: { kind: "constant" } },
  ],
  assumptions: [
    "All grains are under water and wet, without trapped air. A component that floats counts as negative: it lifts.",
    "Friction, the carpet's own mass and moving water are left out. This compares bids; it does not show that a carpet stays in place in a flood.",
  ],
  source: "derived from Archimedes' principle",
});

const closing = "a mass per area with an upper limit for each component that may float";

/** Mass per area, in kg/m², that still presses on the carpet when the field is under water. */
export function submergedMass(system: InfillSystem): Figure<"arealDensity"> {
  if (system.components.length === 0) return noInfillClaimed("arealDensity");
  return boundedFigure("arealDensity", sumOf(system.components.map(submergedOf)), () => workingOf(system), closing);
}

/** The same for each component alone, in the order of the components. */
export const submergedComponents = (system: InfillSystem) =>
  system.components.map((component) => ({
    id: component.id,
    label: component.material.label,
    submerged: submergedMass({ ...system, components: [component] }),
  }));
