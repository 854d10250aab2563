import type { Figure, Origin, Working } from "#lib/figure";
import { type In, type Interval, intervalOf, notNegative, product, quotient, type Reading } from "#lib/quantity";
import { boundedFigure, derivedFrom } from "./bounded-figure";
import { inBoth, readingInBoth } from "./component";

/** A loose or packed density and where it comes from. */
export type StatedDensity = Readonly<{ reading: Reading<"kg/m³">; from: Origin }>;

/** The density of a bed as placed and after it has settled. */
type Settling = Readonly<{ placed: StatedDensity; settled: StatedDensity }>;

const closing = "densities above 0";

const densityOf = ({ reading }: StatedDensity) => notNegative(intervalOf(reading));

const settlingWorking = (before: Interval<"m">, { placed, settled }: Settling): Working => ({
  formula: "depth after settling = depth as placed × density as placed ÷ density after settling",
  inputs: [
    { label: "depth as placed", text: inBoth("length", before), from: { kind: "figure", figure: "infill-depth" } },
    { label: "density as placed", text: readingInBoth("bulkDensity", placed.reading), from: placed.from },
    { label: "density after settling", text: readingInBoth("bulkDensity", settled.reading), from: settled.from },
  ],
  assumptions: ["No infill leaves the field."],
  source: "derived from conservation of mass",
});

/**
 * Depth in m after the bed has become denser without losing mass: h₂ = h₁ · ρ₁ ÷ ρ₂.
 * @source derived from conservation of mass
 */
export const settledDepth = (depth: Figure<"length">, densities: Settling): Figure<"length"> =>
  derivedFrom(depth, "length", (before) => {
    const ratio = quotient(densityOf(densities.placed), densityOf(densities.settled));
    return boundedFigure("length", product(before, ratio), () => settlingWorking(before, densities), closing);
  });

/** Mass per area in kg/m² that a depth of loose infill amounts to. */
export function massOfDepth(depth: In<"m">, density: StatedDensity): Figure<"arealDensity"> {
  const working = {
    formula: "mass per area = depth × loose density",
    inputs: [
      { label: "depth", text: inBoth("length", { low: depth, high: depth }), from: { kind: "constant" } },
      { label: "loose density", text: readingInBoth("bulkDensity", density.reading), from: density.from },
    ],
    assumptions: [],
    source: "derived from the definition of bulk density",
  } as const;
  return boundedFigure("arealDensity", product({ low: depth, high: depth }, densityOf(density)), working, closing);
}
