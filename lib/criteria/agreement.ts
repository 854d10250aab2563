/** What one evaluator gives to the bids, in one order for all evaluators: points or scores, more is better. */
export type EvaluatorsScores = Readonly<{ evaluator: string; scores: readonly number[] }>;

/** How far evaluators agree on the order of the bids. */
export type Agreement = Readonly<
  | {
      kind: "measured";
      /** Kendall's W: 0 for none, 1 for one order from all. */
      concordance: number;
      /** Mean of the rank correlations of all pairs of evaluators; null where no two put the bids in an order. */
      meanCorrelation: number | null;
      /** Mean rank of each bid, 1 for the best. */
      meanRanks: readonly number[];
    }
  /** Fewer than two evaluators or bids, or every evaluator gives all bids the same. */
  | { kind: "nothing-to-compare" }
>;

/** Ranks with the best as 1; equals share the mean of their places. */
export function midRanks(scores: readonly number[]): readonly number[] {
  return scores.map((score) => {
    const above = scores.filter((other) => other > score).length;
    const alike = scores.filter((other) => other === score).length;
    return above + (alike + 1) / 2;
  });
}

/**
 * Kendall's coefficient of concordance, with the correction for ties.
 * @throws RangeError if evaluators score unlike numbers of bids: the caller matched them up amiss
 * @source Kendall and Gibbons, Rank Correlation Methods, 1990, from memory: W = 12 S ÷ (m²(n³ − n) − m Σ(t³ − t))
 */
export function agreement(evaluators: readonly EvaluatorsScores[]): Agreement {
  const [people, bids] = [evaluators.length, evaluators[0]?.scores.length ?? 0];
  if (evaluators.some(({ scores }) => scores.length !== bids))
    throw new RangeError("every evaluator has to score the same bids");
  const ranks = evaluators.map(({ scores }) => midRanks(scores));
  const sums = Array.from({ length: bids }, (_, bid) => ranks.reduce((sum, row) => sum + (row[bid] ?? 0), 0));
  const mean = (people * (bids + 1)) / 2;
  const spread = sums.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  const tied = ranks.reduce((sum, row) => sum + tieTerm(row), 0);
  const most = people * people * (bids ** 3 - bids) - people * tied;
  if (people < 2 || bids < 2 || most === 0) return { kind: "nothing-to-compare" };
  const concordance = (12 * spread) / most;
  return {
    kind: "measured",
    concordance,
    meanCorrelation: meanCorrelation(ranks),
    meanRanks: sums.map((sum) => sum / people),
  };
}

/** Σ(t³ − t) over the groups of equal ranks of one evaluator. */
function tieTerm(ranks: readonly number[]): number {
  const sizes = new Map<number, number>();
  for (const rank of ranks) sizes.set(rank, (sizes.get(rank) ?? 0) + 1);
  return [...sizes.values()].reduce((sum, size) => sum + size ** 3 - size, 0);
}

/**
 * Mean over all pairs of evaluators who put the bids in an order; null where there is no such pair.
 * @source Spearman’s rank correlation with ties: Pearson’s correlation of the mid-ranks
 */
function meanCorrelation(ranks: readonly (readonly number[])[]): number | null {
  const correlations = ranks.flatMap((one, at) =>
    ranks.slice(at + 1).flatMap((other) => {
      const mean = (one.length + 1) / 2;
      const product = (a: readonly number[], b: readonly number[]) =>
        a.reduce((sum, rank, bid) => sum + (rank - mean) * ((b[bid] ?? mean) - mean), 0);
      const most = Math.sqrt(product(one, one) * product(other, other));
      return most > 0 ? [product(one, other) / most] : [];
    }),
  );
  return correlations.length === 0 ? null : correlations.reduce((sum, one) => sum + one, 0) / correlations.length;
}

/** In plain words; the words are a prompt to talk, never a correction of anybody. @source thresholds: common practice, no source */
export function explainAgreement(measured: Agreement): string {
  if (measured.kind === "nothing-to-compare")
    return "There are not two evaluators with an order of the bids, so there is nothing to compare.";
  const shown = `Kendall’s W is ${measured.concordance.toFixed(2)}, where 1 is one order from all and 0 is none`;
  if (measured.concordance >= 0.7) return `The evaluators put the bids in much the same order. ${shown}.`;
  if (measured.concordance >= 0.4)
    return `The evaluators agree in part. ${shown}. Talk about the bids they place furthest apart.`;
  return `The evaluators hardly agree on an order. ${shown}. Read the criteria together before you settle on one score.`;
}
