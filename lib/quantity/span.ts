import { measured } from "./convert";
import type { DimensionName, SiUnit } from "./dimensions";
import type { Interval } from "./unit";

/** A closed interval of plain numbers, for arithmetic between units. Open sides are ±Infinity. */
export type Span = Readonly<{ low: number; high: number }>;

/** The span with the SI unit of its dimension. */
export const tagged = <D extends DimensionName>(dimension: D, { low, high }: Span): Interval<SiUnit<D>> => ({
  low: measured(dimension, low),
  high: measured(dimension, high),
});

export const sumOf = (spans: readonly Span[]): Span =>
  spans.reduce((sum, { low, high }) => ({ low: sum.low + low, high: sum.high + high }), { low: 0, high: 0 });

export const difference = (from: Span, take: Span): Span => ({ low: from.low - take.high, high: from.high - take.low });

/** Nothing of something unbounded is nothing. */
const times = (one: number, other: number) => (one === 0 || other === 0 ? 0 : one * other);

/** Product of any two spans: the extremes lie at the corners. */
export function product(one: Span, other: Span): Span {
  const corners = [one.low, one.high].flatMap((a) => [times(a, other.low), times(a, other.high)]);
  return { low: Math.min(...corners), high: Math.max(...corners) };
}

/** Quotient of spans; what is negative in them is left out. Over a divisor that may be 0 it has no upper end. */
export function quotient(over: Span, under: Span): Span {
  const [top, bottom] = [notNegative(over), notNegative(under)];
  return {
    low: top.low === 0 ? 0 : top.low / bottom.high,
    high: top.high === 0 ? 0 : top.high / bottom.low,
  };
}

/** The span without its negative part: masses, densities and lengths have none, whatever a tolerance says. */
export const notNegative = ({ low, high }: Span): Span => ({ low: Math.max(0, low), high: Math.max(0, high) });
