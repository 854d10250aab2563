import { listed } from "#lib/figure";
import { type Comparison, dominances, totalIntervals } from "#lib/robustness";

type NameOf = (bid: string) => string;

/** Who leads whatever open claims turn out to be, at the owner's weights. */
export function leadWords(comparison: Comparison, letterOf: NameOf): string {
  const { certainLeader, totals } = totalIntervals(comparison);
  if (totals.length < 2) return "";
  return certainLeader === null
    ? "With the owner’s weights, the claims that are open or given as a range can still change which bid comes first."
    : `With the owner’s weights, bid ${letterOf(certainLeader)} stays first whatever the open claims and the ranges turn out to be.`;
}

/** Which bid is ahead of which without asking for exact weights, in sentences. */
export function dominanceWords(comparison: Comparison, letterOf: NameOf): readonly string[] {
  const found = dominances(comparison);
  const over = (weights: (typeof found)[number]["weights"]) =>
    [...new Set(found.filter((one) => one.weights === weights).map(({ bid }) => bid))].map((bid) => ({
      bid,
      others: found
        .filter((one) => one.bid === bid && one.weights === weights)
        .map((one) => `bid ${letterOf(one.over)}`),
    }));
  const sentences = [
    ...over("any-weights").map(
      ({ bid, others }) =>
        `Bid ${letterOf(bid)} is at least as good as ${listed(others)} on every criterion, so no weights can turn that.`,
    ),
    ...over("owners-order").map(
      ({ bid, others }) =>
        `Bid ${letterOf(bid)} is ahead of ${listed(others)} for all weights that keep the owner’s order of importance.`,
    ),
  ];
  return sentences.length > 0
    ? sentences
    : [
        "Of no two bids is one ahead for all weights, nor for all that keep the owner’s order, once open claims are taken at their least for the one and at their most for the other.",
      ];
}
