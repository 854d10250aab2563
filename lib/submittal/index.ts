export { type DeliveredInfill, deliveredInfill, type WantedInfill, type WeighTicket } from "./delivered-infill";
export { type DepthReadings, depthReadings, type WantedDepth } from "./depth-readings";
export type { RegisterItem, SubmittalVersion } from "./model";
export {
  type LineState,
  type RegisterLine,
  registerLine,
  registerSentence,
  startingRegister,
} from "./register";
export type { Expected, LaboratoryReport, PrintedAverage, ReportFinding } from "./report-checks/model";
export { reportChecks, reportFindings } from "./report-checks/report-findings";
export { type ReviewAction, reviewActions } from "./review-actions";
export { laboratoryReportSchema, registerSchema, submittedValuesSchema, weighTicketsSchema } from "./schema";
export { suggestedAction } from "./suggested-action";
export {
  type AgainstBid,
  type AgainstSpecification,
  type ReviewedValue,
  reviewValue,
  type ValueReview,
} from "./value-review";
