import { sharesOf, type WeightShares } from "./model";

/** The place of one criterion, 1 for the most important; criteria of one place are equally important. */
export type CriterionRank = Readonly<{ criterion: string; rank: number }>;

/**
 * How weights follow from an order alone.
 * - `centroid`: the middle of all weights that keep the order.
 * - `sum`: falling evenly; flatter, nearer to what people say when they are asked for points.
 * - `reciprocal`: one over the place.
 */
export type RankRule = "centroid" | "sum" | "reciprocal";

const weightAt: Readonly<Record<RankRule, (place: number, count: number) => number>> = {
  centroid: (place, count) => {
    let weight = 0;
    for (let later = place; later <= count; later += 1) weight += 1 / later;
    return weight / count;
  },
  sum: (place, count) => (2 * (count + 1 - place)) / (count * (count + 1)),
  reciprocal: (place) => 1 / place,
};

/**
 * Weights from an order of importance. Criteria that share a rank share the mean of the weights of the places they take
 * up, whatever the ranks are called: 1, 2, 2, 4 and 1, 2, 2, 3 are one order.
 * @source rank order centroid: Barron and Barrett, Management Science 42, 1996; rank sum: Stillwell, Seaver and Edwards 1981
 */
export function rankWeights(ranks: readonly CriterionRank[], rule: RankRule = "centroid"): WeightShares {
  const count = ranks.length;
  const weights = ranks.map(({ criterion, rank }) => {
    const before = ranks.filter((other) => other.rank < rank).length;
    const alike = ranks.filter((other) => other.rank === rank).length;
    let weight = 0;
    for (let place = before + 1; place <= before + alike; place += 1) weight += weightAt[rule](place, count) / alike;
    return { criterion, weight };
  });
  return sharesOf(weights);
}
