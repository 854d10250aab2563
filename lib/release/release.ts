import type { Release, ReleasePart, ReleaseState } from "./model";

/** What each part is called, in the order of the job. */
export const releaseParts: Readonly<Record<ReleasePart, string>> = {
  requirements: "Requirements",
  "side-by-side": "Side by side",
  infill: "Infill and mass",
  hardness: "Hardness outlook",
  cost: "Life-cycle cost",
  evaluation: "Evaluation",
  recommendation: "Recommendation, with the paper for the board",
  promised: "Promised against measured",
  record: "Record",
};

/** @param now ISO 8601 in UTC */
export function releaseState({ endsAt, takenBackAt }: Release, now: string): ReleaseState {
  if (takenBackAt !== null) return "taken-back";
  return Date.parse(now) < Date.parse(endsAt) ? "open" : "ended";
}
