export { amountCents, amountText, shareOfWords } from "./amount";
export {
  type AlternativeCost,
  type BidCost,
  type CostAsBid,
  type ProjectCost,
  type ProjectCosting,
  projectCost,
} from "./bid-costs";
export { type BreakEven, breakEven, type LinearComparison } from "./break-even";
export { type CashFlows, type CostSetting, cashFlows, type LineFlow } from "./cash-flows";
export { type CostCategory, costCategories } from "./categories";
export { abnormalPrices, priceScreen, type ScreenedBid } from "./checks/abnormal-prices";
export { amountInWords } from "./checks/amount-in-words";
export { bidFormArithmetic, type StatedForm } from "./checks/bid-form-arithmetic";
export type { MoneyFinding } from "./checks/model";
export { costConventionsSchema } from "./conventions-schema";
export { type BridgeStep, type CostBridge, costBridge } from "./cost-bridge";
export { type CostDifference, costDifference, inconclusiveBelow } from "./cost-difference";
export type { CategoryEntry, CostEntry } from "./cost-entries";
export { type CostLineKind, type FlowSetting, type LinePrice, type StudyYears, studyYearsOf } from "./cost-line-kind";
export { assumptionsOf, costLines, flowsOf, pricesOf } from "./cost-lines";
export type {
  BaseAlternative,
  ComparedWith,
  Costing,
  LinkParameter,
  LinkParameters,
  LinkSetting,
  PlainPrice,
  Plug,
  ScopeEntry,
  ScopeItem,
  ScopeStanding,
} from "./costing-model";
export { costingSchema, startingCosting } from "./costing-schema";
export { type CountedLines, countedLines, type LeftOutLine } from "./counted-lines";
export { inConstantMoney } from "./current-money";
export {
  capitalRecovery,
  escalatingUniformPresentWorth,
  singlePresentWorth,
  sinkingFund,
  uniformPresentWorth,
} from "./discount-factors";
export { discountRate } from "./discount-rate";
export { costPerAreaYear, costPerHour, equivalentAnnualCost } from "./equivalent-annual-cost";
export type { ForeignPrice } from "./foreign-prices";
export { inCurrency } from "./in-currency";
export { startingChecklist } from "./levelling/checklist";
export { type BidToLevel, type LevelledBid, levelledBids } from "./levelling/levelled-bids";
export type { LevelledLine, LineOrigin } from "./levelling/levelled-line";
export { type ScopeOutcome, type ScopeRow, scopeStandings } from "./levelling/scope";
export { comparisonRates, type LifeCycleCost, type LifeCycleSetting, lifeCycleCost } from "./life-cycle-cost";
export { placeOfLine } from "./life-cycle-working";
export { type LinkId, linkIds } from "./link-ids";
export { linkDefaults } from "./links/defaults";
export type { LinkRow } from "./links/linked-lines";
export type { LinkFacts, TechnicalLink } from "./links/model";
export { technicalLinks } from "./links/technical-links";
export { type AgainstBase, againstBase, type Measured } from "./measures/against-base";
export { type Cycle, capitalisedCost, commonHorizon, cycleAnnualCost } from "./measures/chain-cost";
export { priceByIndex } from "./measures/index-escalation";
export { type Payback, payback } from "./measures/payback";
export { adjustedRateOfReturn, savingsToInvestment } from "./measures/savings";
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
  Purpose,
  Role,
  RoleKind,
  ShareOf,
  Timing,
  Years,
} from "./model";
export { fisherNominalRate, fisherRateWithout } from "./nominal-rate";
export { parseRealRate } from "./parse-rate";
export { type Discounting, flowPresentValue, presentValue } from "./present-value";
export { priceFields, priceLineSchema, priceLinesSchema, statedTotalSchema } from "./price-line-schema";
export {
  federalEnergyRate,
  parseRateTable,
  rateForTerm,
  withinFederalEnergyRate,
} from "./rate-table";
export { resolvedLines } from "./resolved-lines";
export { priceRoles, type Standing, standingOf } from "./roles";
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
export {
  costsAlong,
  type ExploredIn,
  type ExploredTie,
  exploredTies,
  tieBrackets,
  tieWithin,
} from "./uncertainty/explored-ties";
export { type BidLines, type LineInput, linesModel } from "./uncertainty/lines-model";
export type { CostModel, CostOfBid, InputActs, InputValues, SharedDriver, UncertainInput } from "./uncertainty/model";
export { sampledModel } from "./uncertainty/sampled-model";
export type { StatedInput, StatedTarget, StatedUncertainty } from "./uncertainty/stated-model";
export { actsOf, type InputTarget, type LineMove, type LinePart, type LineRef } from "./uncertainty/targets";
export {
  type Bracket,
  explainTies,
  gridSteps,
  rootBetween,
  type TiedValues,
  type TieQuestion,
  type TieWords,
  tiedValues,
  tieStart,
} from "./uncertainty/tied-values";
export { type UncertainInputs, uncertainInputs } from "./uncertainty/uncertain-inputs";
