export { amountCents, amountText } from "./amount";
export { type BreakEven, breakEven, type LinearComparison } from "./break-even";
export { type CashFlows, type CostSetting, cashFlows, type LineFlow } from "./cash-flows";
export { type CostCategory, costCategories } from "./categories";
export { type CostDifference, costDifference, inconclusiveBelow } from "./cost-difference";
export type { CategoryEntry, CostEntry } from "./cost-entries";
export type { CostLineKind, FlowSetting, LinePrice } from "./cost-line-kind";
export { assumptionsOf, costLines, flowsOf, pricesOf } from "./cost-lines";
export {
  capitalRecovery,
  escalatingUniformPresentWorth,
  singlePresentWorth,
  sinkingFund,
  uniformPresentWorth,
} from "./discount-factors";
export { costPerAreaYear, costPerHour, equivalentAnnualCost } from "./equivalent-annual-cost";
export { comparisonRates, type LifeCycleCost, type LifeCycleSetting, lifeCycleCost } from "./life-cycle-cost";
export type {
  Amount,
  CostConventions,
  CostFlow,
  CostPart,
  CostStream,
  Escalation,
  GivenBy,
  PriceLine,
  PriceLineHead,
  PriceLineKind,
  PriceTerms,
  Timing,
  Years,
} from "./model";
export { fisherNominalRate, fisherRateWithout } from "./nominal-rate";
export { type Discounting, flowPresentValue, presentValue } from "./present-value";
export { costConventionsSchema, priceFields, priceLineSchema, priceLinesSchema } from "./schema";
export { shownCents } from "./shown-cents";
export { type RateComparison, type TyingRates, tyingRates } from "./tying-rates";
export { baseValues, costAt, valuesWith } from "./uncertainty/cost-at";
export {
  type BidOutcome,
  type ChanceOf,
  type CheaperThan,
  type CostOutcome,
  type CostPercentile,
  costOutcome,
} from "./uncertainty/cost-outcome";
export { type CostSwing, type CostSwings, costSwings, swingChances } from "./uncertainty/cost-swings";
export {
  type CostDraws,
  type DrawingOrder,
  drawCosts,
} from "./uncertainty/draw-costs";
export { type BidLines, type LineInput, linesModel } from "./uncertainty/lines-model";
export type { CostModel, CostOfBid, InputActs, InputValues, SharedDriver, UncertainInput } from "./uncertainty/model";
export { sampledModel } from "./uncertainty/sampled-model";
export { actsOf, type InputTarget, type LineMove, type LinePart, type LineRef } from "./uncertainty/targets";
export {
  explainTies,
  gridSteps,
  rootBetween,
  type TiedValues,
  type TieQuestion,
  type TieWords,
  tiedValues,
  tieStart,
} from "./uncertainty/tied-values";
