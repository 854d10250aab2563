/** What a criterion needs to have a weight: whether it scores, and its points. */
type Weighed = Readonly<{ valueFunction: Readonly<{ kind: string }>; weight: number }>;

/**
 * Each scoring criterion's part of all weights, in the order given; a criterion that only gates has 0. They add up to 1
 * whatever the bids show, so a claim that is missing never makes the others count for more. All 0 where nothing weighs.
 */
export function weightShares(criteria: readonly Weighed[]): readonly number[] {
  const weights = criteria.map(({ valueFunction, weight }) => (valueFunction.kind === "none" ? 0 : weight));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => (sum > 0 ? weight / sum : 0));
}
