import type { Interval } from "#lib/quantity";

/** What the granules are made of. A blend holds mineral and other granules in one delivery. */
export type MaterialClass = "mineral" | "polymer" | "organic" | "blend";

/** What a grain does in fresh water: "depends" means that the recipe or treatment decides, so ask for the data sheet. */
export type InWater = "sinks" | "floats" | "floats-then-wets" | "depends";

/** An interval and where it comes from: a citation, "common practice, no source" or "from memory". */
export type Sourced<U extends string> = Interval<U> & Readonly<{ source: string }>;

/** Grain sizes by sieve opening. `mesh` is the pair of sieve numbers as the trade writes it, coarse sieve first. */
export type UsualGrain = Sourced<"m"> & Readonly<{ mesh: "as millimetres" | `${number}–${number}` }>;

/** One infill material. Densities are bands to judge claims by; a bid's own figure takes precedence where it gives one. */
export type InfillMaterial = Readonly<{
  id: string;
  label: string;
  class: MaterialClass;
  /** Share of the mass that is mineral granules. Filler bound inside a polymer granule does not count. */
  mineralShare: Interval<"1">;
  /** Loose, as poured, dry. */
  bulkDensity: Sourced<"kg/m³">;
  /** Of a single grain. Where grains soak: from the dry grain to its solid matter with all pores full of water. */
  particleDensity: Sourced<"kg/m³">;
  inWater: InWater;
  usualGrain: UsualGrain | null;
  notes: string;
  source: string;
}>;

/** A kind of layer under the carpet that takes up impact. */
export type ShockLayerKind = Readonly<{
  id: string;
  label: string;
  thickness: Sourced<"m">;
  density: Sourced<"kg/m³">;
  /** How long such layers are claimed to last. */
  life: Sourced<"s">;
  notes: string;
}>;
