import { type DimensionName, type Interval, measured, type SiUnit, type UnitOf } from "#lib/quantity";
import type { Sourced } from "./model";

/** Both ends of a band in one unit, the SI unit where none is named. */
export const between = <D extends DimensionName>(
  dimension: D,
  low: number,
  high: number,
  unit?: UnitOf<D>,
): Interval<SiUnit<D>> => ({ low: measured(dimension, low, unit), high: measured(dimension, high, unit) });

/** A loose or particle density in kg/m³ with its source. */
export const density = (low: number, high: number, source: string): Sourced<"kg/m³"> => ({
  ...between("bulkDensity", low, high),
  source,
});
