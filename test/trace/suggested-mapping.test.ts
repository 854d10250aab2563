import { expect, test } from "vitest";
import { suggestedMapping, traceFormat } from "#lib/trace";

const suggestionFor = (headings: string) => {
  const format = traceFormat([headings, ...Array.from({ length: 20 }, (_, at) => `${at};${at}`)].join("\n"));
  return format.ok ? suggestedMapping(format.value) : null;
};

test.each([
  ["Time (ms);Acceleration (g)", { timeColumn: 1, timeUnit: "ms", accelerationColumn: 2, accelerationUnit: "g" }],
  ["t [µs];a [m/s²]", { timeColumn: 1, timeUnit: "µs", accelerationColumn: 2, accelerationUnit: "m/s²" }],
  ["Deceleration, m/s^2;Time, s", { timeColumn: 2, timeUnit: "s", accelerationColumn: 1, accelerationUnit: "m/s²" }],
  ["Channel 1;Channel 2", { timeColumn: null, timeUnit: null, accelerationColumn: null, accelerationUnit: null }],
  ["Time;Acc", { timeColumn: 1, timeUnit: null, accelerationColumn: 2, accelerationUnit: null }],
])("reads the headings %s", (headings, wanted) => expect(suggestionFor(headings)).toEqual(wanted));
