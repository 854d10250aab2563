import type { Instrumentation } from "next";
import { errorFacts } from "#lib/log";
import { log, printThroughLog } from "./app/_data/log";

/** Next calls it once, before the first request. */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME !== "nodejs") return;
  printThroughLog();
  const { sweepDaily } = await import("./app/_data/sweep-daily");
  sweepDaily();
}

/** Next calls it where a page, a file or an action fails. The route is a pattern, and what was sent is not told. */
export const onRequestError: Instrumentation.onRequestError = (problem, { method }, { routePath, routeType }) => {
  log("request-failed", { method, route: routePath, kind: routeType, ...errorFacts(problem) });
};
