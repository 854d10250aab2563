import { explainQuantity, failed, parseExact, type Result, succeeded } from "#lib/quantity";
import {
  explainTrace,
  samplingFor,
  type TraceQuestion,
  type TraceResults,
  traceFromText,
  traceResults,
} from "#lib/trace";
import { mappingOf, type TraceChoice } from "./trace-choice";

/** How the method wants the trace to be worked out; the drop height as typed. */
export type TraceSettings = Omit<TraceQuestion, "dropHeight"> & Readonly<{ dropHeight: string }>;

/** @source common practice, no source: recorders filter already; the flat missile falls 24 in */
export const usualSettings: TraceSettings = {
  filter: "unfiltered",
  leadIn: "free-fall",
  dropHeight: "",
  criterionWindow: "any-length",
};

/** Everything a file tells by a choice of columns and settings, or what keeps it from being read, in sentences. */
export function traceReading(
  text: string,
  choice: TraceChoice,
  { dropHeight, ...settings }: TraceSettings,
): Result<TraceResults, readonly string[]> {
  const mapping = mappingOf(choice);
  if (!mapping.ok) return mapping;
  const trace = traceFromText(text, mapping.value);
  if (!trace.ok) return failed([explainTrace(trace.problem)]);
  const height = dropHeight.trim() === "" ? null : parseExact("length", dropHeight);
  if (height !== null && !height.ok) return failed([`Drop height: ${explainQuantity(height.problem)}`]);
  if (height !== null && !(height.value.value > 0))
    return failed([`Drop height: “${dropHeight}” was read. Expected a height above 0.`]);
  const { filter } = settings;
  if (filter !== "unfiltered" && samplingFor(filter, trace.value.interval) === "too-slow-to-filter")
    return failed([
      `The samples come too slowly for the filter of class ${filter}: ${Math.round(1 / trace.value.interval).toLocaleString("en-US")} a second. Choose a lower class or no filter.`,
    ]);
  return succeeded(traceResults(trace.value, { ...settings, dropHeight: height === null ? null : height.value.value }));
}
