import type { BidScore, CriterionScore } from "./model";

/** How sure the order of two neighbours is. */
export type Lead = Readonly<{
  ahead: string;
  behind: string;
  how: "ahead for certain" | "ahead on the figures shown" | "tied";
}>;

export type Ranking = Readonly<{
  /** Best first. Tied bids share a place, and the place after them is left out: 1, 1, 3. */
  places: readonly Readonly<{ place: number; bid: string }>[];
  /** One for each pair of neighbours in `places`. */
  leads: readonly Lead[];
  /** Bids that fail a gate, in the order given. They stay visible and have no place. */
  failing: readonly string[];
}>;

/** Totals closer than this are one total: they differ by the rounding of sums only. */
const sumRounding = 1e-12;

/** What a criterion adds to a place: the value of the figure shown, or the worst it may be while none counts. 0 to 1. */
export const placingValue = (score: CriterionScore | undefined): number =>
  score?.value?.likely ?? score?.value?.low ?? 0;

/**
 * What a bid is placed by, 0 to 1: its total on the figures it shows, a figure that is missing at the worst of what it may
 * be. Silence can't lift a bid, and it does not push down what is shown.
 */
export const placingTotal = ({ criteria }: BidScore): number =>
  criteria.reduce((sum, score) => sum + score.share * placingValue(score), 0);

export const isTied = (first: BidScore, second: BidScore): boolean =>
  Math.abs(placingTotal(first) - placingTotal(second)) <= sumRounding;

/** Bids that fail no gate, best first, ties in the order given. */
export const inContention = (scores: readonly BidScore[]): readonly BidScore[] =>
  scores.filter(({ standing }) => standing !== "fails a gate").sort((a, b) => placingTotal(b) - placingTotal(a));

/** A bid with an open gate may still drop out, so it leads nobody for certain. */
function leadOf(ahead: BidScore, behind: BidScore): Lead {
  const pair = { ahead: ahead.bid, behind: behind.bid };
  if (isTied(ahead, behind)) return { ...pair, how: "tied" };
  const apart = (ahead.total?.low ?? 0) > (behind.total?.high ?? 0);
  const certain = apart && ahead.standing === "passes all gates";
  return { ...pair, how: certain ? "ahead for certain" : "ahead on the figures shown" };
}

/** The order of the bids, and between neighbours how sure it is: for certain only where their totals can't overlap. */
export function ranking(scores: readonly BidScore[]): Ranking {
  const ordered = inContention(scores);
  const placeOf = (score: BidScore) => ordered.findIndex((other) => isTied(other, score)) + 1;
  return {
    places: ordered.map((score) => ({ place: placeOf(score), bid: score.bid })),
    leads: ordered.slice(1).map((behind, index) => leadOf(ordered[index] ?? behind, behind)),
    failing: scores.filter(({ standing }) => standing === "fails a gate").map(({ bid }) => bid),
  };
}

/**
 * Whether one bid is sure to be at least as good on every scoring criterion and better on one, whatever the weights.
 * @source Pareto dominance; over intervals the worst of one against the best of the other, derived
 */
export function dominates(first: BidScore, second: BidScore): boolean {
  const pairs = first.criteria.flatMap(({ value, criterion }) => {
    const other = second.criteria.find((score) => score.criterion.id === criterion.id)?.value ?? null;
    return value === null || other === null ? [] : [{ low: value.low, high: other.high }];
  });
  return pairs.every(({ low, high }) => low >= high) && pairs.some(({ low, high }) => low > high);
}
