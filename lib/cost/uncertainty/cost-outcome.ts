import {
  type Between,
  type Estimate,
  meanEstimate,
  quantileInterval,
  sampleQuantile,
  shareEstimate,
  shareInterval,
} from "#lib/sampling";
import type { CostDraws } from "./draw-costs";

/** A cost that is stayed below with some chance, and ends that hold the true one with 95 % confidence. Cents. */
export type CostPercentile = Readonly<{ chance: number; cents: number; between: Between }>;

/** How one bid's cost came out. Money is in cents. */
export type BidOutcome = Readonly<{
  bid: string;
  how: "compiled" | "direct";
  mean: Estimate;
  deviation: number;
  lowest: number;
  highest: number;
  percentiles: readonly CostPercentile[];
  /** Costs at the chances 0.5 %, 1.5 %, … 99.5 %: the rising curve of a chart. */
  curve: readonly Readonly<{ chance: number; cents: number }>[];
  /** Draws in each of the bins that all bids share. */
  counts: readonly number[];
  /** Chance that no other bid costs less; ties count in part. */
  cheapest: ChanceOf;
}>;

/** A chance from draws, with its standard error and its 95 % ends. */
export type ChanceOf = Estimate & Readonly<{ between: Between }>;

/** Chance that one bid costs less than another on the same draws, and how far apart they are. */
export type CheaperThan = Readonly<{
  bid: string;
  than: string;
  chance: ChanceOf;
  /** `than` less `bid`, in cents: above 0 where `bid` costs less on average. */
  saving: Estimate;
}>;

export type CostOutcome = Readonly<{
  seed: number;
  samples: number;
  bids: readonly BidOutcome[];
  /** Edges of the bins in cents, one more than there are bins. */
  edges: readonly number[];
  pairs: readonly CheaperThan[];
}>;

/** Chances whose costs are listed. */
const listedChances = [0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95] as const;
const bins = 40;

const chanceOf = (hits: number, tries: number): ChanceOf => ({
  ...shareEstimate(hits, tries),
  between: shareInterval(hits, tries),
});

/** What the draws say: percentiles, curves, and which bid is how often the cheaper one. */
export function costOutcome({ seed, samples, bids }: CostDraws): CostOutcome {
  const sorted = bids.map(({ costs }) => costs.toSorted());
  const low = Math.min(...sorted.map((costs) => sampleQuantile(costs, 0)));
  const high = Math.max(...sorted.map((costs) => sampleQuantile(costs, 1)));
  const width = high > low ? (high - low) / bins : 1;
  const firsts = firstPlaces(bids.map(({ costs }) => costs));
  return {
    seed,
    samples,
    edges: Array.from({ length: bins + 1 }, (_, index) => low + index * width),
    bids: bids.map(({ bid, how, costs }, at) => {
      const rising = sorted[at] ?? costs;
      const { value, standardError, deviation } = meanEstimate(costs);
      return {
        bid,
        how,
        mean: { value, standardError },
        deviation,
        lowest: sampleQuantile(rising, 0),
        highest: sampleQuantile(rising, 1),
        percentiles: listedChances.map((chance) => ({
          chance,
          cents: sampleQuantile(rising, chance),
          between: quantileInterval(rising, chance),
        })),
        curve: Array.from({ length: 100 }, (_, index) => {
          const chance = (index + 0.5) / 100;
          return { chance, cents: sampleQuantile(rising, chance) };
        }),
        counts: binned(costs, low, width),
        cheapest: chanceOf(firsts[at] ?? 0, samples),
      };
    }),
    pairs: bids.flatMap((one, at) => bids.slice(at + 1).flatMap((other) => bothWays(one, other))),
  };
}

function binned(costs: Float64Array, low: number, width: number): readonly number[] {
  const counts = new Array<number>(bins).fill(0);
  for (const cost of costs) {
    const bin = Math.min(bins - 1, Math.max(0, Math.floor((cost - low) / width)));
    counts[bin] = (counts[bin] ?? 0) + 1;
  }
  return counts;
}

/** How often each bid is the cheapest; bids that tie share the draw. */
function firstPlaces(all: readonly Float64Array[]): readonly number[] {
  const firsts = new Float64Array(all.length);
  const count = all[0]?.length ?? 0;
  for (let draw = 0; draw < count; draw += 1) {
    let least = Number.POSITIVE_INFINITY;
    let leader = 0;
    let ties = 0;
    for (let at = 0; at < all.length; at += 1) {
      const cost = (all[at] as Float64Array)[draw] as number;
      if (cost < least) {
        least = cost;
        leader = at;
        ties = 1;
      } else if (cost === least) ties += 1;
    }
    if (ties === 1) firsts[leader] = (firsts[leader] as number) + 1;
    else
      for (let at = 0; at < all.length; at += 1)
        if ((all[at] as Float64Array)[draw] === least) firsts[at] = (firsts[at] as number) + 1 / ties;
  }
  // thirds of ties may leave a last digit too many
  return Array.from(firsts, (first) => Math.min(count, first));
}

type Drawn = CostDraws["bids"][number];

/** How two bids compare on the same draws, told from either side. */
function bothWays(one: Drawn, other: Drawn): readonly CheaperThan[] {
  const count = one.costs.length;
  const savings = new Float64Array(count);
  let hits = 0;
  for (let draw = 0; draw < count; draw += 1) {
    const saving = (other.costs[draw] as number) - (one.costs[draw] as number);
    savings[draw] = saving;
    hits += saving > 0 ? 1 : saving === 0 ? 0.5 : 0;
  }
  const { value, standardError } = meanEstimate(savings);
  return [
    { bid: one.bid, than: other.bid, chance: chanceOf(hits, count), saving: { value, standardError } },
    { bid: other.bid, than: one.bid, chance: chanceOf(count - hits, count), saving: { value: -value, standardError } },
  ];
}
