import type { Origin } from "#lib/figure";
import type { InfillMaterial } from "#lib/material";
import type { In, Reading } from "#lib/quantity";

/** Layered: one on top of the other. Blended: mixed, so that fine grains can sit in the voids of coarse ones. */
export type Placement = "layered" | "blended";

/** One material of a bid's infill. */
export type InfillComponent = Readonly<{
  id: string;
  material: InfillMaterial;
  /** Mass per area of field. */
  arealDensity: Reading<"kg/m²">;
  /** Loose, as poured. Null where the bid does not state it: then the material's band is used. */
  bulkDensity: Reading<"kg/m³"> | null;
}>;

/** The infill of one bid. Components run from the bottom to the top where they are layered. */
export type InfillSystem = Readonly<{
  bid: string;
  placement: Placement;
  components: readonly InfillComponent[];
}>;

/** A length as claimed, and where: the pile height, the thickness of the shock layer. */
export type ClaimedLength = Readonly<{ reading: Reading<"m">; from: Origin }>;

/** What one truck carries. */
export type Payload = Readonly<{ value: In<"kg">; text: string; source: string }>;
