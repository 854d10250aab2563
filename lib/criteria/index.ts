export { scoreBid } from "./bid-score";
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
export { dominates, type Lead, type Ranking, ranking } from "./ranking";
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
