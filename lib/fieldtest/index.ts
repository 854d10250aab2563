export { depthPlaces, levelPlaces } from "./campaign-places";
export { ageCountsFrom, type CampaignPoint, campaignPoints } from "./campaign-points";
export { type CampaignTrend, campaignTrend, type PromisedLevels, type TrendPoint } from "./campaign-trend";
export { type FieldMap, fieldMap, type MapNode, type MapWish } from "./field-map";
export { inverseDistanceValue, type MeasuredPlace } from "./inverse-distance";
export { type KrigedValue, ordinaryKriging } from "./kriging";
export { type Drops, locationLevel } from "./location-level";
export { explainLocationNote, type LocationNote, noteOnDrops, noteOnLevel } from "./location-notes";
export { fieldVerdict, type LocationVerdict, locationVerdict, locationVerdicts } from "./location-verdict";
export {
  locationsNeeded,
  locationsNeededByNormal,
  type ShareQuestion,
  shareAboveLimit,
  upperToleranceLimit,
} from "./locations-needed";
export { infillVolumeShown, type MissingInfill, type MissingInfillQuestion, missingInfill } from "./missing-infill";
export type { Campaign, CampaignKind, CampaignWeather, DepthReading, SurfaceMoisture, TestLocation } from "./model";
export {
  type Pasted,
  type PastedCellProblem,
  type PastedDepth,
  type PastedDrops,
  type PastedUnits,
  pastedDepths,
  pastedDrops,
} from "./pasted-tests";
export { layoutOfSport, type PlanLayout, type PlanLayoutId, planLayouts } from "./plan-layouts";
export {
  type LevelLimit,
  type LocationResult,
  type MeasuringKnowledge,
  type ReducedCampaign,
  reducedCampaign,
} from "./reduced-campaign";
export {
  type LocationUncertainty,
  locationUncertainty,
  pooledRepeatability,
  type Repeatability,
  statedRepeatability,
} from "./repeatability";
export { type CampaignInput, campaignRules, campaignSchema, campaignShape } from "./schema";
export {
  explainPlan,
  type OwnersSpot,
  type PlanLocation,
  type PlanProblem,
  type PlanWish,
  type TestPlan,
  testPlan,
} from "./test-plan";
export { type TestProtocol, testProtocols } from "./test-protocols";
export { toleranceFactor } from "./tolerance-factor";
export {
  empiricalVariogram,
  fittedVariogram,
  semivarianceAt,
  type Variogram,
  type VariogramBin,
} from "./variogram";
export { type WarrantyClause, type WarrantyFacts, type WarrantyLocation, warrantyFacts } from "./warranty-facts";
export { type WearZone, wearZones } from "./wear-zones";
