import {
  type DimensionDefinition,
  type DimensionName,
  dimensions,
  type SiUnit,
  type UnitDefinition,
} from "./dimensions";
import type { In } from "./unit";

/** The systems of units a reader can choose between. */
export type UnitSystem = "us" | "metric";

/** The symbols of the units of a dimension. */
export type UnitOf<D extends DimensionName> = keyof (typeof dimensions)[D]["units"] & string;

/** The definition of a unit by its symbol. @throws RangeError if the dimension has no such unit */
export function unitDefinition(dimension: DimensionName, unit: string): UnitDefinition {
  const definition: DimensionDefinition = dimensions[dimension];
  const found = Object.hasOwn(definition.units, unit) ? definition.units[unit] : undefined;
  if (found === undefined) throw new RangeError(`${definition.label} has no unit “${unit}”`);
  return found;
}

/**
 * A number tagged with the SI unit of its dimension: `measured("arealDensity", 3, "lb/ft²")`.
 * Without a unit the number is in SI already.
 */
export function measured<D extends DimensionName>(dimension: D, value: number, unit?: UnitOf<D>): In<SiUnit<D>> {
  return (unit === undefined ? value : siOf(dimension, value, unit)) as In<SiUnit<D>>;
}

/** The number to write in front of the unit for an SI value. */
export function inUnit<D extends DimensionName>(dimension: D, si: In<SiUnit<D>>, unit: UnitOf<D>): number {
  return numberIn(dimension, si, unit);
}

/** The unit in which a reader of that system sees the dimension. */
export function unitFor<D extends DimensionName>(dimension: D, system: UnitSystem): UnitOf<D> {
  return dimensions[dimension][system].unit as UnitOf<D>;
}

/** `measured` for a unit known only as text that was looked up before. */
export function siOf(dimension: DimensionName, value: number, unit: string): number {
  const { factor, zero = 0 } = unitDefinition(dimension, unit);
  return zero + value * factor;
}

/** `inUnit` for a unit known only as text that was looked up before. */
export function numberIn(dimension: DimensionName, si: number, unit: string): number {
  const { factor, zero = 0 } = unitDefinition(dimension, unit);
  return (si - zero) / factor;
}
