export { type Agreement, agreement, type EvaluatorsScores, explainAgreement, midRanks } from "./agreement";
export type { Asked } from "./asked-of";
export { reweighted, scoreBid } from "./bid-score";
export { likelyFigure } from "./criterion-score";
export { discountedValue, undiscountedValue } from "./discount";
export { deviationsCounted, scoredSpan } from "./figure-spread";
export type { Gate, Margins, OneLimit, Span } from "./gate";
export { type GateKind, type GateRule, gateDecision, gateOrderProblem, gateSchema, gates } from "./gates";
export {
  type Addition,
  type CriteriaText,
  judgingAlready,
  profileEntries,
  withEntry,
  withProfile,
} from "./library/added";
export { library } from "./library/library";
export {
  type LibraryEntry,
  type LibraryHeading,
  libraryHeadings,
  limitStandings,
  type Profile,
  type UsualLimit,
} from "./library/model";
export { profiles } from "./library/profiles";
export type {
  AskedOf,
  BidFigures,
  BidScore,
  Counted,
  Criterion,
  CriterionScore,
  EvidenceLevel,
  EvidenceRule,
  GateOutcome,
  Measure,
  ScoreInterval,
  ShownFigure,
  Standing,
  StatusWord,
} from "./model";
export { dominates, type Lead, placingTotal, placingValue, type Ranking, ranking } from "./ranking";
export { type RatingAnchors, type RatingLevel, startingLevels } from "./rating";
export { ratingMeasure } from "./rating-measure";
export { type CriterionText, criteriaSchema, gateIn } from "./schema";
export { type ShortfallRule, shortfallRules } from "./shortfall-rules";
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
export {
  type JudgedLevel,
  type MethodWeights,
  methodWeights,
  type PersonsMethod,
  type WeightMethod,
} from "./weights/method-weights";
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
export { headingsSchema, weightMethodSchema } from "./weights/schema";
export {
  type CombinedWeight,
  type CombinedWeights,
  combinedWeights,
  type PersonsWeights,
} from "./weights/several-people";
export {
  type Heading,
  headingKey,
  type Weighed,
  type WeightItem,
  type WeightLevel,
  weightLevels,
  weightTree,
} from "./weights/weight-levels";
