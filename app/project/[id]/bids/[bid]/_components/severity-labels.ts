import type { Severity } from "#lib/crosscheck";

/** How serious a finding is, in words. */
export const severityLabels: Record<Severity, string> = {
  "can't be true": "Both can’t be true",
  "needs an answer": "Needs an answer",
  note: "Worth knowing",
};
