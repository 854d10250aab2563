import { type SubmittalKind, submittalKinds } from "#lib/requirement";
import { type LineState, type RegisterLine, reviewActions } from "#lib/submittal";

/** What a kind of submittal is handed in for, as the specification divides them. */
const articleLabels = { action: "Action", informational: "Informational", closeout: "Closeout" } as const;

export const kindInWords = (kind: SubmittalKind): string => articleLabels[submittalKinds[kind].article];

/** Days since the line waits for whoever has to act now; null where nobody has to. */
export function daysOpen(state: LineState): number | null {
  switch (state.kind) {
    case "overdue":
      return state.days;
    case "in-review":
    case "to-be-resubmitted":
      return state.daysOpen;
    case "awaited":
    case "closed":
      return null;
  }
}

/** The answer to the last version, in the trade’s words; empty where there is none yet. */
export function actionInWords({ item }: RegisterLine): string {
  const action = item.versions.at(-1)?.action ?? null;
  return action === null ? "" : reviewActions[action].label;
}
