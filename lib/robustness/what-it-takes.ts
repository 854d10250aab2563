import { sameTotal } from "./model";
import type { KnownBids } from "./weight-room";

/**
 * One thing that could be otherwise: a claim, a price, a value, a weight. `leadAt` is how far the bid would be ahead of
 * the best of the others, in any unit; it must rise or stay all the way from where it is to the furthest it may go.
 */
export type Lever = Readonly<{
  id: string;
  label: string;
  kind: "claim" | "price" | "value" | "weight";
  from: number;
  furthest: number;
  leadAt: (at: number) => number;
}>;

/** What it takes for a bid to come first by this lever alone. `part` is the share of the way to the furthest that is used. */
export type LeverNeed = Readonly<{ lever: Lever }> &
  Readonly<
    | { kind: "leads-already" }
    | { kind: "takes"; at: number; part: number }
    | { kind: "not-enough"; shortAtFurthest: number }
  >;

/** Halvings: more than a number has digits. */
const halvings = 80;

/**
 * The least that one lever has to move so that the bid is level with the best of the others. Exact for a function that
 * only rises; what happens between is not assumed.
 * @source bisection
 */
export function leverNeed(lever: Lever): LeverNeed {
  const { from, furthest, leadAt } = lever;
  if (leadAt(from) >= -sameTotal) return { lever, kind: "leads-already" };
  const atFurthest = leadAt(furthest);
  if (atFurthest < -sameTotal) return { lever, kind: "not-enough", shortAtFurthest: -atFurthest };
  let [behind, level] = [from, furthest];
  for (let halving = 0; halving < halvings; halving += 1) {
    const middle = (behind + level) / 2;
    if (middle === behind || middle === level) break;
    if (leadAt(middle) >= 0) level = middle;
    else behind = middle;
  }
  return { lever, kind: "takes", at: level, part: (level - from) / (furthest - from) };
}

/** All levers, those that are enough first, the smallest part of the way first; then those that come nearest. */
export function leverNeeds(levers: readonly Lever[]): readonly LeverNeed[] {
  const size = (need: LeverNeed) =>
    need.kind === "leads-already" ? -1 : need.kind === "takes" ? need.part : 1 + need.shortAtFurthest;
  return levers.map(leverNeed).toSorted((one, other) => size(one) - size(other));
}

const totalOf = (values: readonly number[], shares: readonly number[]): number =>
  values.reduce((sum, value, at) => sum + value * (shares[at] ?? 0), 0);

/** A criterion with what a lever is called by. */
export type NamedCriterion = Readonly<{ id: string; label: string }>;

/**
 * The levers that plain values and weights offer to one bid: its value on each criterion up to 1, and each weight, up
 * or down to where the lead is largest. A lead over the best of several rivals rises towards that end or has its peak
 * between; a weight is taken in the direction in which the bid gets level first.
 * @throws RangeError if the bid is not among the bids
 */
export function valueAndWeightLevers(
  bids: KnownBids,
  shares: readonly number[],
  criteria: readonly NamedCriterion[],
  bid: string,
): readonly Lever[] {
  const mine = bids.find((one) => one.bid === bid);
  if (mine === undefined) throw new RangeError(`no bid ${bid} in this comparison`);
  const rivals = bids
    .filter((one) => one !== mine)
    .map(({ values }) => mine.values.map((value, at) => value - (values[at] ?? 0)));
  const leadNow = Math.min(...rivals.map((leads) => totalOf(leads, shares)));
  return criteria.flatMap(({ id, label }, criterion): readonly Lever[] => {
    const share = shares[criterion] ?? 0;
    if (share === 0) return [];
    const from = mine.values[criterion] ?? 0;
    const value: Lever = {
      ...{ id: `value/${id}`, label, kind: "value", from, furthest: 1 },
      leadAt: (at) => leadNow + share * (at - from),
    };
    // against each rival the lead is a straight line over the share: what the others give, and what this one gives
    const lines = rivals.map((leads) => {
      const own = leads[criterion] ?? 0;
      return { own, rest: share < 1 ? (totalOf(leads, shares) - share * own) / (1 - share) : 0 };
    });
    const weightLead = (at: number) =>
      lines.reduce((least, { own, rest }) => Math.min(least, rest + at * (own - rest)), Number.POSITIVE_INFINITY);
    // a least of straight lines has one peak: up to there it rises
    const peaks = share < 1 ? [peakTowards(weightLead, share, 1), peakTowards(weightLead, share, 0)] : [];
    const weights = peaks
      .filter((furthest) => furthest !== share)
      .map(
        (furthest): Lever => ({
          ...{ id: `weight/${id}`, label, kind: "weight", from: share, furthest },
          leadAt: weightLead,
        }),
      );
    return [value, ...weights];
  });
}

/** Where a function with one peak is highest between two ends. @source golden section search, Kiefer 1953 */
function peakTowards(lead: (at: number) => number, from: number, end: number): number {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [from, end];
  for (let turn = 0; turn < 120; turn += 1) {
    const one = b - ratio * (b - a);
    const other = a + ratio * (b - a);
    if (lead(one) >= lead(other)) b = other;
    else a = one;
  }
  const found = (a + b) / 2;
  const candidates = [from, found, end];
  return candidates.reduce((best, at) => (lead(at) > lead(best) + sameTotal ? at : best), from);
}
