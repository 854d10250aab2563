import type { AccelerationUnit, TimeUnit, TraceFormat } from "./model";

/** What headings let one guess; a part they do not tell is null and has to be asked for. Columns are counted from 1. */
export type SuggestedMapping = Readonly<{
  timeColumn: number | null;
  timeUnit: TimeUnit | null;
  accelerationColumn: number | null;
  accelerationUnit: AccelerationUnit | null;
}>;

const timeUnitOf = (heading: string): TimeUnit | null => {
  if (/\b(ms|msec|millisec\w*)\b/i.test(heading)) return "ms";
  if (/[µμ]s\b|\b(us|usec|microsec\w*)\b/i.test(heading)) return "µs";
  return /\b(s|sec|seconds?)\b/i.test(heading) ? "s" : null;
};

const accelerationUnitOf = (heading: string): AccelerationUnit | null => {
  if (/m\s*\/\s*s\s*(²|\^?2)|m\s?s-2/i.test(heading)) return "m/s²";
  return /\bg('?s)?\b|g-?max/i.test(heading) ? "g" : null;
};

/** Reads the headings of a file; the person who imports it confirms or corrects. */
export function suggestedMapping({ headings }: TraceFormat): SuggestedMapping {
  const indexOf = (pattern: RegExp) => headings.findIndex((heading) => pattern.test(heading));
  const time = indexOf(/\btime\b|^t\b/i);
  const named = indexOf(/acc|decel|^a\b/i);
  const acceleration = named >= 0 ? named : headings.findIndex((heading) => accelerationUnitOf(heading) !== null);
  return {
    timeColumn: time < 0 ? null : time + 1,
    timeUnit: timeUnitOf(headings[time] ?? ""),
    accelerationColumn: acceleration < 0 ? null : acceleration + 1,
    accelerationUnit: accelerationUnitOf(headings[acceleration] ?? ""),
  };
}
