import { type BidValues, type Comparison, inContention, sameTotal, valueEnds } from "./model";

/** Over which weights one bid is sure to be at least as good as another, and better for some of them. */
export type DominanceOver = "any-weights" | "owners-order";

export type Dominance = Readonly<{ bid: string; over: string; weights: DominanceOver }>;

/** By how much one bid is ahead at least on each criterion: its worst against the other's best. */
const leastLead = (one: BidValues, other: BidValues): readonly number[] =>
  one.values.map((value, at) => {
    const rival = other.values[at];
    return rival === undefined ? 0 : valueEnds(value).low - valueEnds(rival).high;
  });

/** @source Pareto dominance; over intervals the worst of one against the best of the other, derived */
const dominatesAlways = (leads: readonly number[]): boolean =>
  leads.every((lead) => lead >= -sameTotal) && leads.some((lead) => lead > sameTotal);

/**
 * Whether the lead is sure for all weights that keep an order: every sum of the leads from the most important down is
 * at least 0. Criteria of equal weight may come in any order, so within them the smaller leads come first.
 * @source cumulative rule of Kirkwood and Sarin, Operations Research 33, 1985, from memory: the corners of the ordered
 * weights are equal weights on the first k criteria
 */
function dominatesInOrder(leads: readonly number[], shares: readonly number[]): boolean {
  const ordered = leads
    .map((lead, at) => ({ lead, share: shares[at] ?? 0 }))
    .filter(({ share }) => share > 0)
    .toSorted((one, other) =>
      Math.abs(one.share - other.share) > 1e-12 ? other.share - one.share : one.lead - other.lead,
    );
  let sum = 0;
  let ahead = false;
  for (const { lead } of ordered) {
    sum += lead;
    if (sum < -sameTotal) return false;
    if (sum > sameTotal) ahead = true;
  }
  return ahead;
}

/** Every pair of bids in contention of which one is sure to be ahead, with the widest weights over which that holds. */
export function dominances(comparison: Comparison): readonly Dominance[] {
  const bids = inContention(comparison);
  const weighing = comparison.shares.map((share) => share > 0);
  return bids.flatMap((one) =>
    bids.flatMap((other): readonly Dominance[] => {
      if (one === other) return [];
      const leads = leastLead(one, other);
      const pair = { bid: one.bid, over: other.bid };
      if (dominatesAlways(leads.filter((_, at) => weighing[at]))) return [{ ...pair, weights: "any-weights" }];
      return dominatesInOrder(leads, comparison.shares) ? [{ ...pair, weights: "owners-order" }] : [];
    }),
  );
}
