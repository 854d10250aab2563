export { agedResults } from "./aged-results";
export { type AnswerText, answeredBid } from "./answered-bid";
export { type AwardedBid, awardedBid } from "./awarded-bid";
export { bidsAtStart, bidsInWords } from "./bids-in-words";
export { claimDetails, claimedInWords, claimInWords } from "./claim-in-words";
export type { EvidencedFigure } from "./claimed-figure";
export { type ConvertedFigure, convertedFigure } from "./converted-figure";
export { criteriaOf } from "./criteria-of";
export { type DeliveredWork, deliveredWork } from "./delivered-work";
export type { BidFacts } from "./derived-measures";
export { earlierBids } from "./earlier-bids";
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
export { askedOfInWords, gateInWords, judgedInWords, marginInWords, scatterInWords } from "./gate-in-words";
export { type InstalledOutlook, installedOutlook } from "./installed-outlook";
export { type CompetitionSetting, competitionSetting } from "./known-systems";
export { claimedMeasures, derivedMeasures, evidenceLevels, measures } from "./measures";
export type {
  Bid,
  BidEvaluation,
  Brief,
  Evaluation,
  HardnessFigures,
  InfillClaim,
  InfillFigures,
  KeptAttachment,
  Project,
  Requirements,
  Substitution,
} from "./model";
export { type BidOpenings, type OpenFigure, openFigures, openQuestions, type Reach } from "./open-questions";
export { type PeoplesOrders, type PersonsOrder, peoplesOrders, peoplesSentences } from "./peoples-orders";
export { formatPointSpan, formatPoints, formatShare } from "./points";
export { type AmendedText, amend, amendedFields } from "./procedure/acts/amendment-acts";
export { handInSheet, openSheets } from "./procedure/acts/committee-acts";
export {
  choosePrices,
  moveStage,
  type PricesText,
  type StageMove,
  sealPrices,
} from "./procedure/acts/stage-acts";
export { type Closed, closedKinds } from "./procedure/closed-kinds";
export { completenessFacts } from "./procedure/completeness-facts";
export type { ProjectAct, ProjectKind, ProjectMove, StandingDocuments } from "./procedure/project-documents";
export { projectRules } from "./procedure/project-rules";
export { importRefusal } from "./procedure/rules/import-rule";
export { openBefore } from "./procedure/rules/procedure-rule";
export { projectRequirements } from "./project-requirements";
export { type PromisedAgainstMeasured, promisedAgainstMeasured } from "./promised-entries";
export { type PropertyYears, propertyYears } from "./property-years";
export { referenceMethod } from "./reference-method";
export { type PricedReset, priceLineLabels, type ResetPrice, resetPrices } from "./reset-prices";
export { reviewedRequirements } from "./reviewed-requirements";
export {
  type AttachmentText,
  type BidText,
  type BriefText,
  bidSchema,
  briefSchema,
  type CampaignText,
  type CostingText,
  documentSchemas,
  type OwnersWordsText,
  type ProjectFile,
  pricesSchema,
  projectFileSchema,
  type RequirementsText,
  requirementsSchema,
  sectionSettingsSchema,
} from "./schema";
export { consequenceInWords, shortfallSentences } from "./shortfall-in-words";
export { startingBid, startingProject } from "./starting-project";
export { type SubmittalReview, submittalReviews } from "./submittal-reviews";
export { substitutedBid } from "./substitution/substitution";
export {
  type SubstitutionEffects,
  silentSentence,
  substitutionEffects,
} from "./substitution/substitution-effects";
export { type SubstitutionText, substitutionSchema } from "./substitution/substitution-schema";
export { totalWorking } from "./total-working";
export { wantedProperties } from "./wanted-properties";
export { withoutNames } from "./without-names";
