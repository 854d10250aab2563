import { type DimensionOf, propertyOf, type QuantityPropertyId } from "#lib/claim";

/** The dimension of a property that takes a figure. */
export function dimensionOf<P extends QuantityPropertyId>(id: P): DimensionOf<P> {
  const property = propertyOf(id);
  if (property.kind !== "quantity") throw new RangeError(`${id} takes no figure`);
  return property.dimension as DimensionOf<P>; // the catalogue's own list says so; a look-up by id loses it
}
