export { type Age, formatAge } from "./age";
export { type ClaimComparability, claimComparability } from "./claim-comparability";
export {
  type AgedPoint,
  agedPoints,
  bestClaim,
  type ClaimQuery,
  claimsFor,
  quantityOf,
  type Standing,
} from "./claimed";
export {
  type CellProblem,
  claimsFromRows,
  layoutOf,
  type PastedClaim,
  type PastedClaims,
  type PastedLayout,
} from "./claims-from-rows";
export { commaSeparated, parseCommaSeparated, unguarded } from "./comma-separated";
export { type Comparability, comparability } from "./comparability";
export { comparesBy } from "./compares-by";
export {
  type Condition,
  type ConditionProblem,
  explainCondition,
  formatCondition,
  isConditionStated,
  type Moisture,
  ofAge,
  parseCondition,
} from "./condition";
export { type ConditionAgreement, conditionsAgree } from "./conditions-agree";
export {
  type Conversion,
  type ConversionInput,
  type ConversionInputs,
  type ConversionProblem,
  conversionBetween,
  conversionInputNames,
  conversions,
  conversionsTo,
  convertReading,
} from "./conversions";
export { type Drop, dropEnergy, impactSpeed } from "./drop";
export { type Edition, readEdition } from "./edition";
export {
  compareEditions,
  type EditionChange,
  type EditionComparison,
  type EditionHistory,
  editionRegister,
} from "./editions";
export { atLeastAsStrong, type EvidenceLevel, evidenceLevels, matchEvidence } from "./evidence";
export { type Fact, type Family, type FamilyId, familyOf } from "./families";
export { claimFieldLabels } from "./field-labels";
export {
  completeMethod,
  completeProperty,
  inSentence,
  matchMethod,
  matchProperty,
  methodOf,
  propertyOf,
} from "./find";
export { type InfillState, isAtFullDepth } from "./infill-state";
export { type LevelAtDepth, levelsAtLesserDepth } from "./levels-at-depth";
export { type MethodId, type StatedMethod, type TestMethod, testMethods } from "./methods";
export { type Claim, type ClaimField, type ClaimText, type ClaimValue, claimFields, type Provenance } from "./model";
export { explainPaste, type PasteProblem, parsePastedRows, type Rows } from "./pasted-rows";
export {
  type Choice,
  type Plausible,
  type PropertyGroup,
  type PropertyKind,
  propertyGroups,
} from "./properties/model";
export {
  type DimensionOf,
  type Property,
  type PropertyId,
  properties,
  type QuantityPropertyId,
} from "./properties/properties";
export { explainReportDate, parseReportDate, type ReportDate, type ReportDateProblem } from "./report-date";
export {
  type Accreditation,
  accreditations,
  matchAccreditation,
  matchTestedBuild,
  type ReportDetails,
  reportInWords,
  type TestedBuild,
  testedBuilds,
} from "./report-details";
export {
  type ClaimInput,
  claimSchema,
  provenanceShape,
} from "./schema";
export { type ClaimGaps, type ClaimsReading, oldestUsualReport, readClaims, usualReportAge } from "./shown";
export { formatClaimed, shownIn } from "./shown-in";
export { fieldsInWords, parseFieldCount, type TestedFields } from "./tested-fields";
