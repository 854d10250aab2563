import { type DisplayUnit, formatReading, type Quantity, type Shown, type UnitSystem } from "#lib/quantity";
import { propertyOf } from "./find";
import type { Property, PropertyId } from "./properties/properties";

/** In which unit a reader of that system sees a property: ounces per square yard for pile mass, else the usual unit. */
export function shownIn(property: Property, system: UnitSystem): Shown {
  if (property.kind !== "quantity" || property.shownIn === undefined) return system;
  const preferred: Readonly<Partial<Record<UnitSystem, DisplayUnit>>> = property.shownIn;
  return preferred[system] ?? system;
}

/** A claimed quantity in the unit that the trade writes for its property. */
export const formatClaimed = (property: PropertyId, quantity: Quantity, system: UnitSystem): string =>
  formatReading(quantity.dimension, quantity.reading, shownIn(propertyOf(property), system));
