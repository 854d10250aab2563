import { events, type LogEvent, type LogFacts } from "./model";

const nameInProgram = /^[\w./:()[\]-]{1,120}$/;

/**
 * One event as one line of JSON: time (ISO 8601, UTC), level, event, facts. A text that is no name of something in the
 * program is left out and counted under "withheld".
 */
export function logLine(at: string, event: LogEvent, facts: LogFacts = {}): string {
  const kept: Record<string, string | number | boolean> = {};
  let withheld = 0;
  for (const [key, value] of Object.entries(facts)) {
    if (value === undefined) continue;
    if (typeof value === "string" && !nameInProgram.test(value)) withheld += 1;
    else kept[key] = value;
  }
  return JSON.stringify({ at, level: events[event], event, ...kept, ...(withheld === 0 ? {} : { withheld }) });
}
