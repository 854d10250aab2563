import { quotient, type Span } from "#lib/quantity";
import { arealDensityOf, bedDepthOf, particleDensityOf } from "./component";
import { layeredDepth } from "./layered-depth";
import type { InfillComponent } from "./model";

/** What a component brings to a mix: its depth alone, loose, and the depth of its grains without voids. */
export type Bed = Readonly<{ bed: number; solid: number }>;

/**
 * The shallowest that a mix can be, in the unit of the beds, whichever component is the coarse one.
 *
 * With grains of very different size, the component k that carries the bed keeps its own voids, all coarser grains
 * are embedded in it as solids, and all finer ones sit in its voids: depth = bed_k + Σ solids of the coarser. The
 * mix takes the k that needs the most room. Grains closer in size hinder each other, so real mixes are deeper.
 * Which grains are coarse is not claimed, so the order that gives the least depth is taken. Putting the bed with
 * the most voids (bed − solid) first does that: exchanging two neighbours that are in this order never gives less,
 * as with jobs of length `solid` and tails of length bed − solid that are to end early.
 *
 * @source C. C. Furnas, Industrial and Engineering Chemistry 23 (1931) 1052, limits of packing, from memory; order derived
 */
export function interlockedDepth(beds: readonly Bed[]): number {
  const mostVoidsFirst = beds.toSorted((one, other) => other.bed - other.solid - (one.bed - one.solid));
  return mostVoidsFirst.reduce(
    ({ depth, coarser }, { bed, solid }) => ({ depth: Math.max(depth, coarser + bed), coarser: coarser + solid }),
    { depth: 0, coarser: 0 },
  ).depth;
}

/**
 * Depth in m of mixed components: from fully interlocked to merely added up.
 * The lower bound grows with every bed and every solid, so its end is that of the least of each.
 */
export function blendedDepth(components: readonly InfillComponent[]): Span {
  const least = components.map((component) => ({
    bed: bedDepthOf(component).low,
    solid: quotient(arealDensityOf(component), particleDensityOf(component)).low,
  }));
  const { low, high } = layeredDepth(components);
  return { low: Math.min(interlockedDepth(least), low), high };
}
