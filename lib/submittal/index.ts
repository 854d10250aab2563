export { reviewCaution } from "./caution";
export { type DeliveredInfill, deliveredInfill, type WantedInfill, type WeighTicket } from "./delivered-infill";
export { type DepthReadings, depthReadings, type WantedDepth } from "./depth-readings";
export {
  type Contract,
  type Delivery,
  type PlacedKind,
  type PlacedReading,
  placedKinds,
  type RegisterItem,
  type SubmittalVersion,
  type SubmittedReport,
  type WantedLength,
} from "./model";
export { type PlacedFinding, type PlacedVerdict, placedFindings } from "./placed-findings";
export { type DeviationSetting, type RowFindings, rowFindings } from "./promised/deviations";
export type { PromiseColumn, PromisedRow, PromiseEntry } from "./promised/model";
export { columnKey, columnLabel, inColumn, promisedColumns, promisedRows, sharesRow } from "./promised/promised-rows";
export {
  byUrgency,
  isLate,
  type LineState,
  type RegisterLine,
  registerLine,
  registerSentence,
  startingRegister,
} from "./register";
export type { Expected, LaboratoryReport, PrintedAverage, ReportFinding } from "./report-checks/model";
export { reportChecks, reportFindings } from "./report-checks/report-findings";
export { type ReviewAction, reviewActions } from "./review-actions";
export { reviewLetter } from "./review-letter";
export {
  type ContractText,
  contractSchema,
  type DeliveryText,
  deliverySchema,
  laboratoryReportSchema,
  registerSchema,
  type SubmittalText,
  submittalSchema,
  weighTicketsSchema,
} from "./schema";
export { startingContract, startingDelivery } from "./starting-contract";
export { suggestedAction } from "./suggested-action";
export {
  type AgainstBid,
  type AgainstSpecification,
  type ReviewedValue,
  reviewValue,
  type ValueReview,
} from "./value-review";
export {
  type ReportReview,
  type ReviewRow,
  type ReviewSetting,
  reviewReports,
  reviewVersion,
} from "./version-review";
export { widenedLimit } from "./widened-limit";
