export { amountCents, amountText } from "./amount";
export { type BreakEven, breakEven, type LinearComparison } from "./break-even";
export { type CashFlows, type CostSetting, cashFlows, type LineFlow } from "./cash-flows";
export { type CostCategory, costCategories } from "./categories";
export { costConventionsSchema } from "./conventions-schema";
export { type BridgeStep, type CostBridge, costBridge } from "./cost-bridge";
export { type CostDifference, costDifference, inconclusiveBelow } from "./cost-difference";
export type { CategoryEntry, CostEntry } from "./cost-entries";
export type { CostLineKind, FlowSetting, LinePrice } from "./cost-line-kind";
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
export {
  capitalRecovery,
  escalatingUniformPresentWorth,
  singlePresentWorth,
  sinkingFund,
  uniformPresentWorth,
} from "./discount-factors";
export { discountRate, rateOfMoney } from "./discount-rate";
export { costPerAreaYear, costPerHour, equivalentAnnualCost } from "./equivalent-annual-cost";
export { startingChecklist } from "./levelling/checklist";
export { comparisonRates, type LifeCycleCost, type LifeCycleSetting, lifeCycleCost } from "./life-cycle-cost";
export { type LinkId, linkIds } from "./link-ids";
export { linkDefaults } from "./links/defaults";
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
export { type Discounting, flowPresentValue, presentValue } from "./present-value";
export { priceFields, priceLineSchema, priceLinesSchema, statedTotalSchema } from "./price-line-schema";
export { priceRoles, type Standing, standingOf } from "./roles";
export { shownCents } from "./shown-cents";
export { type RateComparison, type TyingRates, tyingRates } from "./tying-rates";
