import type { CostFlow, Timing } from "./model";
import { flowPresentValue } from "./present-value";

/** The flows of two alternatives and the real rates among which to look, per year, as fractions above −1. */
export type RateComparison = Readonly<{
  first: readonly CostFlow[];
  second: readonly CostFlow[];
  timing: Timing;
  lowest: number;
  highest: number;
}>;

/** The real rates at which two alternatives cost the same, lowest first; every rate; or none of those looked at. */
export type TyingRates = Readonly<
  { kind: "at"; rates: readonly [number, ...number[]] } | { kind: "everywhere" } | { kind: "nowhere" }
>;

/** The range is looked through in so many steps; two ties closer together than a step can be missed. */
const steps = 300;
/** Halvings of one step: far below what a rate can be read to. */
const halvings = 40;
/** Differences in cents below this are the last bits of binary arithmetic. */
const negligible = 1e-4;

/**
 * The real rates at which the present values of two alternatives are equal. There can be more than one where the
 * difference between the two changes sign more than once over the years.
 * @source derived: bisection of the difference of present values, discounted as in 10 CFR 436.16
 */
export function tyingRates({ first, second, timing, lowest, highest }: RateComparison): TyingRates {
  const worth = (flows: readonly CostFlow[], rate: number) =>
    flows.reduce((sum, flow) => sum + flowPresentValue(flow, { rate, timing }), 0);
  const gap = (rate: number) => {
    const difference = worth(first, rate) - worth(second, rate);
    return Math.abs(difference) < negligible ? 0 : difference;
  };
  const tried = Array.from({ length: steps + 1 }, (_, step) => {
    const rate = lowest + ((highest - lowest) * step) / steps;
    return { rate, gap: gap(rate) };
  });
  if (tried.every((one) => one.gap === 0)) return { kind: "everywhere" };

  const [rate, ...others] = tried.flatMap((one, index) => {
    const next = tried[index + 1];
    if (one.gap === 0) return [one.rate];
    return next !== undefined && one.gap * next.gap < 0 ? [crossing(gap, one.rate, next.rate)] : [];
  });
  return rate === undefined ? { kind: "nowhere" } : { kind: "at", rates: [rate, ...others] };
}

/** Where a continuous function changes sign, between two places where its signs differ. */
function crossing(gap: (rate: number) => number, lower: number, upper: number): number {
  const sign = Math.sign(gap(lower));
  let [low, high] = [lower, upper];
  for (let halving = 0; halving < halvings; halving += 1) {
    const middle = (low + high) / 2;
    if (Math.sign(gap(middle)) === sign) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
