export { impactCaution } from "./cautions";
export { naturalFrequency } from "./chance/natural-frequency";
export type { ChanceLimits, ValueChances } from "./chance/value-chances";
export { type DepthLaw, depthLaws } from "./depth-law";
export { levelAfterDepthLoss, lossToReach } from "./depth-loss";
export {
  type DepthMargin,
  type DepthMarginQuestion,
  depthMargin,
  explainDepthMargin,
  type MarginSide,
} from "./depth-margin";
export {
  applicableSensitivity,
  explainSensitivity,
  halfInchRule,
  type Sensitivity,
  type SensitivityFacts,
} from "./depth-sensitivity";
export { driftFromAgedPoints } from "./drift";
export { effectiveYears, effectiveYearsAfterReset, type Reset } from "./effective-age";
export { explainChances, explainChanceYear } from "./explain-chances";
export { explainOutlook } from "./explain-outlook";
export { type DepthGrid, gridSpread } from "./grid-spread";
export {
  type ChanceBound,
  type HardnessChances,
  type HardnessChancesQuestion,
  hardnessChances,
} from "./hardness-chances";
export { type AgedLines, type AgedResult, agedLines, ageInYears, pulledBySingleResults } from "./line/aged-lines";
export { type LeastSquaresLine, leastSquaresLine } from "./line/least-squares";
export { meanOnLine, newResultOnLine, slopeInterval } from "./line/line-intervals";
export { newFieldOnLine, type SeveralFieldsLine, severalFieldsLine } from "./line/several-fields";
export { type RobustLine, robustLine } from "./line/theil-sen";
export type {
  AgedLevel,
  DepthSensitivityChoice,
  Drift,
  FittedDrift,
  HardnessOutlook,
  ImpactRequirement,
  LevelSpan,
  OutlookPremise,
  OutlookQuestion,
  OutlookYear,
  OwnersOutlook,
  PlannedReset,
  PointInTime,
  SpreadChoice,
  StatedLevel,
  YearFound,
  YearOrOpen,
} from "./model";
export { hardnessOutlook } from "./outlook";
export { type OutlookChoices, outlookChoices, startingOutlookText, wantedChance } from "./outlook-choices";
export { type Prediction, predictedLevel } from "./prediction";
export {
  type ChanceOutlook,
  type ChanceQuestion,
  type ChanceYear,
  chanceOutlook,
  chancesOf,
  type SpreadBasis,
} from "./property/chances";
export { explainPropertyChances, explainPropertyYear, type Told } from "./property/explain-chances";
export type { PropertyOutlook, PropertyOutlookQuestion, PropertyYear, ValueBasis } from "./property/model";
export { propertyOutlook } from "./property/outlook";
export { type InputEffect, type MovedInput, whatMovesIt } from "./property/what-moves-it";
export { impactRequirementSchema } from "./schema";
export { spotSensitivity } from "./spot-sensitivity";
export { depthDeviations, depthSpread, infillClass, type MeasuredDepths } from "./spread/depth-spread";
export {
  equalSprings,
  type FieldSensitivity,
  fieldSensitivity,
  type LevelAtLoss,
  ownEvidence,
  shockLayerFactor,
} from "./spread/field-sensitivity";
export { type Grooming, groomings } from "./spread/grooming";
export { spreadValidity } from "./spread/spread-of-level";
export { studentFactor } from "./student-factor";
export { yearInWords } from "./year-in-words";
