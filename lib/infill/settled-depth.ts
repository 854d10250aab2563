import { type Figure, intervalOfFigure, type Origin } from "#lib/figure";
import { type In, intervalOf, type Reading } from "#lib/quantity";
import { boundedFigure } from "./bounded-figure";
import { inBoth, readingInBoth } from "./component";
import { notNegative, product, quotient } from "./span";

/** A loose or packed density and where it comes from. */
export type StatedDensity = Readonly<{ reading: Reading<"kg/m³">; from: Origin }>;

const closing = "densities above 0";

/**
 * Depth in m after the bed has become denser without losing mass: h₂ = h₁ · ρ₁ ÷ ρ₂.
 * @source derived from conservation of mass
 */
export function settledDepth(
  depth: Figure<"length">,
  { placed, settled }: Readonly<{ placed: StatedDensity; settled: StatedDensity }>,
): Figure<"length"> {
  const before = intervalOfFigure(depth);
  if (before === null) return depth;
  const ratio = quotient(notNegative(intervalOf(placed.reading)), notNegative(intervalOf(settled.reading)));
  const working = {
    formula: "depth after settling = depth as placed × density as placed ÷ density after settling",
    inputs: [
      { label: "depth as placed", text: inBoth("length", before), from: { kind: "figure", figure: "infill-depth" } },
      { label: "density as placed", text: readingInBoth("bulkDensity", placed.reading), from: placed.from },
      { label: "density after settling", text: readingInBoth("bulkDensity", settled.reading), from: settled.from },
    ],
    assumptions: ["No infill leaves the field."],
    source: "derived from conservation of mass",
  } as const;
  return boundedFigure("length", product(before, ratio), working, closing);
}

/** Mass per area in kg/m² that a depth of loose infill amounts to. */
export function massOfDepth(depth: In<"m">, density: StatedDensity): Figure<"arealDensity"> {
  const loose = notNegative(intervalOf(density.reading));
  const working = {
    formula: "mass per area = depth × loose density",
    inputs: [
      { label: "depth", text: inBoth("length", { low: depth, high: depth }), from: { kind: "constant" } },
      { label: "loose density", text: readingInBoth("bulkDensity", density.reading), from: density.from },
    ],
    assumptions: [],
    source: "derived from the definition of bulk density",
  } as const;
  return boundedFigure("arealDensity", product({ low: depth, high: depth }, loose), working, closing);
}
