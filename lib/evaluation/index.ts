export { claimInWords } from "./claimed-figure";
export { evaluate } from "./evaluate";
export { claimedMeasures, derivedMeasures, evidenceLevels, measureInSentence, measures } from "./measures";
export type {
  Bid,
  BidEvaluation,
  Brief,
  CostFigures,
  Evaluation,
  HardnessFigures,
  InfillClaim,
  InfillFigures,
  Project,
  Requirements,
} from "./model";
export {
  type BidText,
  type BriefText,
  bidSchema,
  briefSchema,
  documentSchemas,
  type ProjectFile,
  projectFileSchema,
  type RequirementsText,
  requirementsSchema,
} from "./schema";
export { startingBid, startingProject } from "./starting-project";
