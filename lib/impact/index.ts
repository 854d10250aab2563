export { impactCaution } from "./cautions";
export { type DepthLaw, depthLaws, levelAfterDepthLoss, lossToReach } from "./depth-loss";
export { type DepthMargin, type DepthMarginQuestion, depthMargin, explainDepthMargin } from "./depth-margin";
export {
  applicableSensitivity,
  explainSensitivity,
  halfInchRule,
  type Sensitivity,
  type SensitivityFacts,
} from "./depth-sensitivity";
export { driftFromAgedPoints } from "./drift";
export { explainOutlook } from "./explain-outlook";
export { meetsLimit } from "./meets-limit";
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
  PointInTime,
  StatedLevel,
  YearFound,
} from "./model";
export { hardnessOutlook } from "./outlook";
export { type Prediction, predictedLevel } from "./prediction";
export { impactRequirementSchema } from "./schema";
export { studentFactor } from "./student-factor";
