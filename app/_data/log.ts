import { errorFacts, type LogEvent, type LogFacts, logLine } from "#lib/log";
import { installation } from "./installation";

/** Tells an event: as one line of JSON where people sign in; on one's own computer only what failed, in words. */
export function log(event: LogEvent, facts: LogFacts = {}): void {
  const line = logLine(new Date().toISOString(), event, facts);
  if (installation().mode === "shared") process.stdout.write(`${line}\n`);
}

const isError = (value: unknown): value is Error => value instanceof Error;

/**
 * From now on whatever any part prints goes through the log, so that no message with somebody's text gets there. On one's
 * own computer everything is printed as it was.
 */
export function printThroughLog(): void {
  if (installation().mode === "local") return;
  for (const way of ["log", "info", "warn", "error", "debug", "trace"] as const)
    console[way] = (...printed: readonly unknown[]) => {
      const problem = printed.find(isError);
      log("printed", { by: way, ...(problem === undefined ? {} : errorFacts(problem)) });
    };
}
