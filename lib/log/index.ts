export { errorFacts } from "./error-facts";
export { logLine } from "./line";
export type { LogEvent, LogFacts } from "./model";
