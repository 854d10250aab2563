import { criterionScore, withShare } from "./criterion-score";
import type { BidFigures, BidScore, Criterion, CriterionScore, ScoreInterval, Standing } from "./model";
import { weightShares } from "./weight-shares";

function standingOf(scores: readonly CriterionScore[]): Standing {
  const outcomes = scores.map(({ gate }) => gate.kind);
  if (outcomes.includes("falls-short") || outcomes.includes("falls-short-on-evidence")) return "fails a gate";
  return outcomes.includes("not-decided") || outcomes.includes("not-shown") ? "gate open" : "passes all gates";
}

function totalOf(scores: readonly CriterionScore[]): ScoreInterval | null {
  const weighing = scores.filter(({ share }) => share > 0).map(({ contribution }) => contribution);
  if (weighing.length === 0) return null;
  return weighing.reduce((sum, { low, likely, high }) => ({
    low: sum.low + low,
    likely: sum.likely === null || likely === null ? null : sum.likely + likely,
    high: sum.high + high,
  }));
}

/**
 * One bid held against all criteria: gates first, then points on the owner's own anchors. Nothing here looks at another
 * bid, so adding or withdrawing one can't move a score, and points never make up for a gate.
 * @source additive value model with swing weights: von Winterfeldt & Edwards 1986, from memory
 */
export function scoreBid(criteria: readonly Criterion[], { bid, shown }: BidFigures): BidScore {
  const shares = weightShares(criteria);
  return summedUp(
    bid,
    criteria.map((criterion, index) => criterionScore(criterion, shares[index] ?? 0, shown[criterion.id])),
  );
}

/** The same bid with other weights: figures, values and gates stay as they are. Shares are in the order of the criteria. */
export const reweighted = ({ bid, criteria }: BidScore, shares: readonly number[]): BidScore =>
  summedUp(
    bid,
    criteria.map((score, index) => withShare(score, shares[index] ?? 0)),
  );

function summedUp(bid: string, scores: readonly CriterionScore[]): BidScore {
  return {
    bid,
    standing: standingOf(scores),
    criteria: scores,
    total: totalOf(scores),
    coverage: scores.reduce((sum, { share, because }) => (because === null ? sum + share : sum), 0),
    askFirst: scores
      .filter(({ criterion, because }) => because !== null && criterion.evidence.shortfall === "ask-first")
      .map(({ criterion }) => criterion.id),
  };
}
