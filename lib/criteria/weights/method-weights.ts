import type { z } from "zod";
import { sharesOf, type WeightShares } from "./model";
import { type PairwiseWeights, pairwiseWeights } from "./pairwise-weights";
import { swingWeights } from "./point-weights";
import { rankWeights } from "./rank-weights";
import type { weightMethodSchema } from "./schema";

/** How the owner gives weights, with the judgements behind them. */
export type WeightMethod = Readonly<z.output<typeof weightMethodSchema>>;

/** A criterion that scores, with the points of its own that count where weights are given directly. */
type Weighed = Readonly<{ id: string; weight: number }>;

/** Shares by the method, or the sentence on what is still lacking. */
export type MethodWeights = Readonly<
  { kind: "weighed"; shares: WeightShares; pairwise: PairwiseWeights | null } | { kind: "lacking"; message: string }
>;

/**
 * The weights that a method and its judgements come to. What is said of other criteria is passed over, so that removing
 * a criterion asks for nothing.
 * @param nameOf what people call a criterion
 */
export function methodWeights(
  method: WeightMethod,
  criteria: readonly Weighed[],
  nameOf: (criterion: string) => string,
): MethodWeights {
  const ids = criteria.map(({ id }) => id);
  const weighed = (shares: WeightShares): MethodWeights => ({ kind: "weighed", shares, pairwise: null });
  const lacking = (given: ReadonlySet<string>, what: string): MethodWeights | null => {
    const missing = ids.find((id) => !given.has(id));
    return missing === undefined ? null : { kind: "lacking", message: `“${nameOf(missing)}” has no ${what} yet.` };
  };
  if (criteria.length === 0) return weighed([]);
  switch (method.kind) {
    case "direct":
      return weighed(sharesOf(criteria.map(({ id, weight }) => ({ criterion: id, weight }))));
    case "swing": {
      const points = ids.flatMap((id) => method.points.filter(({ criterion }) => criterion === id));
      const gap = lacking(new Set(points.map(({ criterion }) => criterion)), "points for its swing");
      if (gap !== null) return gap;
      const swings = swingWeights(points);
      return swings.kind === "weighed" ? weighed(swings.shares) : { kind: "lacking", message: swings.message };
    }
    case "rank-order": {
      const ranks = ids.flatMap((id) => method.ranks.filter(({ criterion }) => criterion === id));
      return (
        lacking(new Set(ranks.map(({ criterion }) => criterion)), "place") ?? weighed(rankWeights(ranks, method.rule))
      );
    }
    case "pairwise": {
      const pairwise = pairwiseWeights(ids, method.judgements);
      if (pairwise.kind === "weighed") return { kind: "weighed", shares: pairwise.shares, pairwise };
      const [[one, other] = ["", ""]] = pairwise.pairs;
      const more = pairwise.pairs.length > 1 ? ` and ${pairwise.pairs.length - 1} more` : "";
      return {
        kind: "lacking",
        message: `Not every pair is judged yet: “${nameOf(one)}” against “${nameOf(other)}”${more}.`,
      };
    }
  }
}
