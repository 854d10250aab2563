import { propertyOf, type QuantityPropertyId } from "#lib/claim";
import { type PhraseQuantity, quantityInPhrase } from "#lib/figure";
import { type DimensionName, notNegative, product, type Span, tagged } from "#lib/quantity";

export { difference, notNegative, quotient, type Span, sumOf, tagged } from "#lib/quantity";

/** Converting units leaves a last bit; that much apart is no difference. */
const lastBit = 1e-9;

/** The span with room for a share of itself on either side. */
export const widened = ({ low, high }: Span, share: number): Span => ({
  low: low - Math.abs(low) * share,
  high: high + Math.abs(high) * share,
});

/** Where a span lies beside another: on one side of it, or with at least one value in common. */
export function beside(one: Span, other: Span): "below" | "in common" | "above" {
  if (isAbove(other.low, one.high)) return "below";
  return isAbove(one.low, other.high) ? "above" : "in common";
}

const isAbove = (one: number, other: number): boolean =>
  one > other && !(Math.abs(one - other) <= lastBit * Math.max(Math.abs(one), Math.abs(other)));

/** Product of spans without negative numbers. */
export const productOf = (spans: readonly Span[]): Span => spans.map(notNegative).reduce(product, { low: 1, high: 1 });

/** A span to stand in a phrase. */
export const spanInPhrase = (dimension: DimensionName, span: Span): PhraseQuantity =>
  quantityInPhrase(dimension, tagged(dimension, span));

/** The same in the units that the trade writes for a property: ounces per square yard for pile mass. */
export function propertyInPhrase(id: QuantityPropertyId, span: Span): PhraseQuantity {
  const property = propertyOf(id);
  if (property.kind !== "quantity") throw new RangeError(`${id} takes no figure`);
  return quantityInPhrase(property.dimension, tagged(property.dimension, span), property.shownIn);
}
