export { agedResults } from "./aged-results";
export { type AnswerText, answeredBid } from "./answered-bid";
export { bidsAtStart, bidsInWords } from "./bids-in-words";
export { claimInWords } from "./claim-in-words";
export type { EvidencedFigure } from "./claimed-figure";
export { type ConvertedFigure, convertedFigure } from "./converted-figure";
export type { BidFacts } from "./derived-measures";
export { evaluate, measuredFigure } from "./evaluate";
export {
  comeBackSentences,
  explainRanking,
  gateSentences,
  lettersOf,
  type Outcome,
  outcomeOf,
} from "./explain-ranking";
export { comparisonOf, placedBids, weighingCriteria, weighingShares } from "./firmness/comparison";
export { type LevelledCost, levelledCost } from "./firmness/cost-criteria";
export { type ComparedOn, type HeldAgainst, heldAgainst } from "./firmness/head-to-head";
export { methodsOf } from "./firmness/methods";
export { type ChangedThing, type SingleChange, singleChanges } from "./firmness/single-changes";
export { type EfficientStanding, type ValuedBid, valueForMoney } from "./firmness/value-for-money";
export { gateInWords, marginInWords } from "./gate-in-words";
export { type InstalledOutlook, installedOutlook } from "./installed-outlook";
export { claimedMeasures, derivedMeasures, evidenceLevels, measures } from "./measures";
export type {
  Bid,
  BidEvaluation,
  Brief,
  Evaluation,
  HardnessFigures,
  InfillClaim,
  InfillFigures,
  Project,
  Requirements,
} from "./model";
export { type BidOpenings, type OpenFigure, openFigures, openQuestions, type Reach } from "./open-questions";
export { formatPointSpan, formatPoints, formatShare } from "./points";
export { type PropertyYears, propertyYears } from "./property-years";
export { referenceMethod } from "./reference-method";
export { type PricedReset, priceLineLabels, type ResetPrice, resetPrices } from "./reset-prices";
export {
  type BidText,
  type BriefText,
  bidSchema,
  briefSchema,
  type CampaignText,
  type CostingText,
  documentSchemas,
  type OwnersWordsText,
  type ProjectFile,
  projectFileSchema,
  type RequirementsText,
  requirementsSchema,
} from "./schema";
export { startingBid, startingProject } from "./starting-project";
export { totalWorking } from "./total-working";
export { wantedProperties } from "./wanted-properties";
export { withoutNames } from "./without-names";
