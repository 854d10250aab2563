export { type Answer, answersTo, type EarlierClaim, earlierVersions, isSettled } from "./answer";
export { findingsAmong } from "./findings";
export type { CheckedBid, CheckedFigure, Finding, Rule, Severity } from "./model";
export { rules } from "./rules";
export { answersSchema } from "./schema";
