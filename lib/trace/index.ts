export { type Baseline, baseline, type LeadIn } from "./baseline";
export {
  type ChannelClass,
  channelClasses,
  type FilterConstants,
  filterConstants,
  filteredTrace,
  type Sampling,
  samplingFor,
} from "./channel-filter";
export { explainTrace } from "./explain-trace";
export {
  type CriterionWindow,
  criterionWindows,
  type HeadInjuryCriterion,
  headInjuryCriterion,
} from "./head-injury-criterion";
export type {
  AccelerationUnit,
  DecimalMark,
  Pulse,
  Separator,
  TimeUnit,
  Trace,
  TraceFormat,
  TraceMapping,
  TraceProblem,
} from "./model";
export { penetration, type SpeedChange, type Stop, speedChange } from "./motion";
export { impactPulse } from "./pulse";
export { traceFromText } from "./read-trace";
export type { SpeedAgreement } from "./speed-agreement";
export { type SuggestedMapping, suggestedMapping } from "./suggested-mapping";
export { traceFormat } from "./trace-format";
export { impactTimeShown, type TraceQuestion, type TraceResults, traceResults } from "./trace-results";
