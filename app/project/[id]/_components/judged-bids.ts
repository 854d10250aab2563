import type { CriterionScore } from "#lib/criteria";
import { type BidEvaluation, type Evaluation, measuredFigure, type Project } from "#lib/evaluation";
import type { Figure } from "#lib/figure";

/** A bid's score on one criterion beside the figure that it was judged by. */
export type JudgedCriterion = Readonly<{ score: CriterionScore; figure: Figure }>;

export type JudgedBid = Readonly<{
  evaluated: BidEvaluation;
  /** Place among the bids as entered; colour and dash follow from it. */
  index: number;
  criteria: readonly JudgedCriterion[];
}>;

export function judgedBids({ bids }: Project, evaluation: Evaluation): readonly JudgedBid[] {
  return evaluation.bids.flatMap((evaluated, index) => {
    const bid = bids.find(({ id }) => id === evaluated.id);
    if (bid === undefined) return [];
    const criteria = evaluated.score.criteria.map((score) => ({
      score,
      figure: measuredFigure({ ...evaluated, bid, area: evaluation.area }, score.criterion).figure,
    }));
    return [{ evaluated, index, criteria }];
  });
}

/** The bids in the order of the ranking, then those that fail a gate. */
export function inOrder({ ranking }: Evaluation, bids: readonly JudgedBid[]): readonly JudgedBid[] {
  const ids = [...ranking.places.map(({ bid }) => bid), ...ranking.failing];
  return ids.flatMap((id) => bids.filter(({ evaluated }) => evaluated.id === id));
}
