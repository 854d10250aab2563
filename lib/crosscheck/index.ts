export { explainFinding, type FindingWords } from "./explain-finding";
export type { Finding, Severity } from "./finding";
export type { CheckedBid } from "./model";
export { findings } from "./rules";
