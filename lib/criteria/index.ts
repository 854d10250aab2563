export { type Agreement, agreement, type EvaluatorsScores, explainAgreement, midRanks } from "./agreement";
export { scoreBid } from "./bid-score";
export { likelyFigure } from "./criterion-score";
export type { Gate, Margins, OneLimit, Span } from "./gate";
export { type GateKind, type GateRule, gateDecision, gateOrderProblem, gateSchema, gates } from "./gates";
export type {
  BidFigures,
  BidScore,
  Criterion,
  CriterionScore,
  EvidenceLevel,
  EvidenceRule,
  GateOutcome,
  Measure,
  ScoreInterval,
  ShortfallRule,
  ShownFigure,
  Standing,
  StatusWord,
} from "./model";
export { dominates, type Lead, placingTotal, placingValue, type Ranking, ranking } from "./ranking";
export { type CriterionText, criteriaSchema } from "./schema";
export type { CurvePoint, EndAnchors, ScoredFigure, ValueBounds, ValueFunction } from "./value-function";
export {
  type ScoreRule,
  type ValueFunctionKind,
  valueAt,
  valueBounds,
  valueCurve,
  valueFunctions,
} from "./value-functions";
export { weightShares } from "./weight-shares";
export { explainStability, type WeightRoom, type WeightStability, weightStability } from "./weight-stability";
export { groupedWeights, type WeightBranch } from "./weights/grouped-weights";
export { type MethodWeights, methodWeights, type WeightMethod } from "./weights/method-weights";
export type { WeightShare, WeightShares } from "./weights/model";
export {
  consistentUpTo,
  explainConsistency,
  type LeastConsistent,
  type PairJudgement,
  type PairwiseWeights,
  pairwiseWeights,
  randomIndex,
} from "./weights/pairwise-weights";
export { type CriterionPoints, directWeights, greatestSwing, swingWeights } from "./weights/point-weights";
export { type CriterionRank, type RankRule, rankWeights } from "./weights/rank-weights";
export { weightMethodSchema } from "./weights/schema";
export {
  type CombinedWeight,
  type CombinedWeights,
  combinedWeights,
  type PersonsWeights,
} from "./weights/several-people";
