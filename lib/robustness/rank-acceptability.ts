import { type Between, type Drawing, type Estimate, shareEstimate, shareInterval } from "#lib/sampling";
import { drawnTotals, mostAtOnce } from "./drawn-totals";
import { type Comparison, checkComparison, inContention, sameTotal } from "./model";
import type { WeightChoice } from "./weight-choice";

/** What is tried and how often. The seed is kept with the result. */
export type RankQuestion = Readonly<{ weights: WeightChoice; seed: number; draws: number }>;

/** A share of the draws, its standard error and its 95 % ends. */
export type DrawnShare = Estimate & Readonly<{ between: Between }>;

/** How one bid comes out over the draws. */
export type BidRanks = Readonly<{
  bid: string;
  /** Share of the draws that put the bid first, second, … Bids that tie share their places. */
  places: readonly DrawnShare[];
  /** Mean of the weights that put it first: what an owner who should choose it would care for. null where it never is. */
  centralWeights: readonly Estimate[] | null;
}>;

/** Share of the draws in which one bid's total is above another's; a tie counts as one half. */
export type HeadToHead = Readonly<{ bid: string; against: string; ahead: DrawnShare }>;

export type RankAcceptability = RankQuestion &
  Readonly<{ bids: readonly BidRanks[]; pairs: readonly HeadToHead[]; out: readonly string[] }>;

/** Draws between two reports. */
const chunk = 2048;

/** Sums over the draws. */
type Counts = Readonly<{
  places: Float64Array;
  pairs: Float64Array;
  firsts: Float64Array;
  /** Of the weights of the draws that put a bid first: their sums, and the sums of their squares. */
  central: Float64Array;
  squares: Float64Array;
}>;

/**
 * How often each bid takes each place over the weights tried, with values in doubt drawn too. Reports after each chunk;
 * whoever stops asking has cancelled it. Same comparison, question and seed give the same bytes.
 * @throws RangeError if shares or values don't match the criteria
 * @source SMAA-2: rank acceptability and central weights, Lahdelma and Salminen, Operations Research 49(3), 2001
 */
export function* rankAcceptability(comparison: Comparison, question: RankQuestion): Drawing<RankAcceptability> {
  checkComparison(comparison);
  const names = inContention(comparison).map(({ bid }) => bid);
  const criteria = comparison.criteria.length;
  const count = names.length;
  const counts: Counts = {
    places: new Float64Array(count * count),
    pairs: new Float64Array(count * count),
    firsts: new Float64Array(count),
    central: new Float64Array(count * criteria),
    squares: new Float64Array(count * criteria),
  };
  const draw = drawnTotals(comparison, question.weights, question.seed);
  for (let done = 0; done < question.draws; ) {
    const draws = Math.min(chunk, question.draws - done);
    for (let drawn = 0; drawn < draws; drawn += mostAtOnce) {
      const now = Math.min(mostAtOnce, draws - drawn);
      const { weights, totals } = draw(now);
      if (count > 0) countDraws(counts, weights, totals, { draws: now, criteria, count });
    }
    done += draws;
    yield { done, of: question.draws };
  }
  return {
    ...question,
    out: comparison.bids.filter(({ standing }) => standing === "out").map(({ bid }) => bid),
    bids: names.map((bid, at) => ({
      bid,
      places: names.map((_, place) => shareOf(counts.places[at * count + place] ?? 0, question.draws)),
      centralWeights: centralOf(counts, at, criteria),
    })),
    pairs: names.flatMap((bid, one) =>
      names.flatMap((against, other) =>
        one === other ? [] : [{ bid, against, ahead: shareOf(counts.pairs[one * count + other] ?? 0, question.draws) }],
      ),
    ),
  };
}

const shareOf = (hits: number, draws: number): DrawnShare => {
  const kept = Math.min(hits, draws); // halves and thirds of ties may leave a last digit too many
  return { ...shareEstimate(kept, draws), between: shareInterval(kept, draws) };
};

/** Means of weights with their standard errors, s ÷ √N over the draws that count; the error of a single one is infinite. */
function centralOf({ firsts, central, squares }: Counts, at: number, criteria: number): readonly Estimate[] | null {
  const first = firsts[at] ?? 0;
  if (first === 0) return null;
  return Array.from({ length: criteria }, (_, criterion) => {
    const place = at * criteria + criterion;
    const value = (central[place] ?? 0) / first;
    const variance = Math.max(0, (squares[place] ?? 0) / first - value ** 2);
    return { value, standardError: first > 1 ? Math.sqrt(variance / (first - 1)) : Number.POSITIVE_INFINITY };
  });
}

type Sizes = Readonly<{ draws: number; criteria: number; count: number }>;

function countDraws(
  { places, pairs, firsts, central, squares }: Counts,
  weights: Float64Array,
  totals: Float64Array,
  { draws, criteria, count }: Sizes,
): void {
  const order = new Int32Array(count);
  for (let draw = 0; draw < draws; draw += 1) {
    const row = draw * count;
    for (let bid = 0; bid < count; bid += 1) {
      const total = totals[row + bid] as number;
      let at = bid;
      while (at > 0 && (totals[row + (order[at - 1] as number)] as number) < total) {
        order[at] = order[at - 1] as number;
        at -= 1;
      }
      order[at] = bid;
    }
    let start = 0;
    while (start < count) {
      const total = totals[row + (order[start] as number)] as number;
      let end = start + 1;
      while (end < count && total - (totals[row + (order[end] as number)] as number) <= sameTotal) end += 1;
      countGroup(order, start, end);
      if (start === 0) addCentral(draw, end);
      start = end;
    }
  }

  /** Bids from `start` up to `end` tie: they share these places, and are ahead of all later ones. */
  function countGroup(sorted: Int32Array, start: number, end: number): void {
    const part = 1 / (end - start);
    for (let at = start; at < end; at += 1) {
      const bid = sorted[at] as number;
      const row = bid * count;
      for (let place = start; place < end; place += 1) places[row + place] = (places[row + place] as number) + part;
      for (let later = end; later < count; later += 1) {
        const pair = row + (sorted[later] as number);
        pairs[pair] = (pairs[pair] as number) + 1;
      }
      if (part < 1)
        for (let other = start; other < end; other += 1)
          if (other !== at)
            pairs[row + (sorted[other] as number)] = (pairs[row + (sorted[other] as number)] as number) + 0.5;
    }
  }

  function addCentral(draw: number, end: number): void {
    const from = draw * criteria;
    for (let at = 0; at < end; at += 1) {
      const bid = order[at] as number;
      firsts[bid] = (firsts[bid] as number) + 1 / end;
      for (let criterion = 0; criterion < criteria; criterion += 1) {
        const place = bid * criteria + criterion;
        const weight = weights[from + criterion] as number;
        central[place] = (central[place] as number) + weight / end;
        squares[place] = (squares[place] as number) + (weight * weight) / end;
      }
    }
  }
}
