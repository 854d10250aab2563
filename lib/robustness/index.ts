export { type Dominance, type DominanceOver, dominances } from "./dominance";
export { type ExactFirst, exactAcceptability } from "./exact-acceptability";
export {
  type CostAnchors,
  explainMethods,
  type MethodBid,
  type MethodCheck,
  type MethodName,
  type MethodOutcome,
  methodCheck,
} from "./method-check";
export { type BidValues, type Comparison, type CriterionValue, type CurveCorner, middleValue } from "./model";
export {
  type BidRanks,
  type DrawnShare,
  type HeadToHead,
  type RankAcceptability,
  type RankQuestion,
  rankAcceptability,
} from "./rank-acceptability";
export { type TotalInterval, totalIntervals } from "./total-interval";
export { usualConcentration, type WeightChoice } from "./weight-choice";
export { type CriterionRoom, type KnownBids, type LeadersRoom, leadersRoom, weightRooms } from "./weight-room";
export {
  type Lever,
  type LeverNeed,
  leverNeed,
  leverNeeds,
  type NamedCriterion,
  valueAndWeightLevers,
} from "./what-it-takes";
