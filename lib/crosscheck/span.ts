import { propertyOf, type QuantityPropertyId } from "#lib/claim";
import { type PhraseQuantity, quantityInPhrase } from "#lib/figure";
import { type DimensionName, type Interval, measured, type SiUnit } from "#lib/quantity";

/** A closed interval of plain numbers, for arithmetic between units. Open sides are ±Infinity. */
export type Span = Readonly<{ low: number; high: number }>;

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

/** Nothing of something unbounded is nothing. */
const times = (one: number, other: number) => (one === 0 || other === 0 ? 0 : one * other);

/** The span without its negative part: masses and lengths have none, whatever a tolerance says. */
export const notNegative = ({ low, high }: Span): Span => ({ low: Math.max(0, low), high: Math.max(0, high) });

export const sumOf = (spans: readonly Span[]): Span =>
  spans.reduce((sum, { low, high }) => ({ low: sum.low + low, high: sum.high + high }), { low: 0, high: 0 });

export const difference = (from: Span, take: Span): Span => ({ low: from.low - take.high, high: from.high - take.low });

/** Product of spans without negative numbers. */
export const productOf = (spans: readonly Span[]): Span =>
  spans
    .map(notNegative)
    .reduce((product, { low, high }) => ({ low: times(product.low, low), high: times(product.high, high) }), {
      low: 1,
      high: 1,
    });

/** Quotient of spans without negative numbers. Over a divisor that may be 0 it has no upper end. */
export function quotient(over: Span, under: Span): Span {
  const [top, bottom] = [notNegative(over), notNegative(under)];
  return {
    low: top.low === 0 ? 0 : top.low / bottom.high,
    high: top.high === 0 ? 0 : top.high / bottom.low,
  };
}

/** The span with the SI unit of its dimension. */
export const tagged = <D extends DimensionName>(dimension: D, { low, high }: Span): Interval<SiUnit<D>> => ({
  low: measured(dimension, low),
  high: measured(dimension, high),
});

/** A span to stand in a phrase. */
export const spanInPhrase = (dimension: DimensionName, span: Span): PhraseQuantity =>
  quantityInPhrase(dimension, tagged(dimension, span));

/** The same in the units that the trade writes for a property: ounces per square yard for pile mass. */
export function propertyInPhrase(id: QuantityPropertyId, span: Span): PhraseQuantity {
  const property = propertyOf(id);
  if (property.kind !== "quantity") throw new RangeError(`${id} takes no figure`);
  return quantityInPhrase(property.dimension, tagged(property.dimension, span), property.shownIn);
}
