import { listed } from "#lib/figure";
import type { PlainDate } from "#lib/quantity";
import { type AskedSubmittal, type Requirement, submittalKinds } from "#lib/requirement";
import type { RegisterItem } from "./model";
import { reviewActions } from "./review-actions";

/**
 * The register as the specification makes it: one line for each requirement and kind of submittal it asks for, then what
 * the owner asks for beyond that. Dates and what came are entered later.
 */
export function startingRegister(
  requirements: readonly Requirement[],
  asked: readonly AskedSubmittal[],
): readonly RegisterItem[] {
  const empty = { due: null, versions: [] };
  const ofClauses = requirements
    .filter(({ isOn }) => isOn)
    .flatMap(({ id, label, submittals }) =>
      submittals.map((kind) => ({
        ...empty,
        id: `${id}-${kind}`,
        from: `${id}-${kind}`,
        item: `${submittalKinds[kind].label}: ${label}`,
        kind,
        clauses: [id],
      })),
    );
  const ofOwner = asked.map(({ id, item, kind, usedBy }) => ({ ...empty, id, from: id, item, kind, clauses: usedBy }));
  return [...ofClauses, ...ofOwner];
}

/** Where a line stands on a day. Days are whole days of the calendar. */
export type LineState = Readonly<
  | { kind: "awaited"; daysLeft: number | null }
  | { kind: "overdue"; days: number }
  | { kind: "in-review"; daysOpen: number; daysOverTime: number }
  | { kind: "to-be-resubmitted"; daysOpen: number }
  | { kind: "closed" }
>;

export type RegisterLine = Readonly<{ item: RegisterItem; version: number; state: LineState; sentence: string }>;

const millisecondsInDay = 86_400_000;
const dayNumber = (date: PlainDate): number => Math.round(Date.parse(`${date}T00:00:00Z`) / millisecondsInDay);
const daysFrom = (from: PlainDate, to: PlainDate): number => dayNumber(to) - dayNumber(from);

/** Days within which a first review is usually answered. @source two weeks, as read in one filed section */
export const usualReviewDays = 14;

function stateOf({ due, versions }: RegisterItem, asOf: PlainDate, reviewDays: number): LineState {
  const last = versions.at(-1);
  if (last === undefined) {
    if (due === null) return { kind: "awaited", daysLeft: null };
    const daysLeft = daysFrom(asOf, due);
    return daysLeft >= 0 ? { kind: "awaited", daysLeft } : { kind: "overdue", days: -daysLeft };
  }
  if (last.action === null) {
    const daysOpen = Math.max(0, daysFrom(last.received, asOf));
    return { kind: "in-review", daysOpen, daysOverTime: Math.max(0, daysOpen - reviewDays) };
  }
  if (reviewActions[last.action].isFinal) return { kind: "closed" };
  return { kind: "to-be-resubmitted", daysOpen: Math.max(0, daysFrom(last.answered ?? last.received, asOf)) };
}

const days = (count: number): string => (count === 1 ? "1 day" : `${count} days`);

function sentenceOf(state: LineState): string {
  switch (state.kind) {
    case "awaited":
      if (state.daysLeft === null) return "Awaited, with no date set.";
      return state.daysLeft === 0 ? "Due today." : `Due in ${days(state.daysLeft)}.`;
    case "overdue":
      return `Overdue by ${days(state.days)}.`;
    case "in-review":
      return state.daysOverTime === 0
        ? `In review for ${days(state.daysOpen)}.`
        : `In review for ${days(state.daysOpen)}, ${days(state.daysOverTime)} over the time for an answer.`;
    case "to-be-resubmitted":
      return `To be handed in again; answered ${days(state.daysOpen)} ago.`;
    case "closed":
      return "Closed.";
  }
}

/** The line as it stands on a day. @param reviewDays within which an answer is due */
export function registerLine(item: RegisterItem, asOf: PlainDate, reviewDays = usualReviewDays): RegisterLine {
  const state = stateOf(item, asOf, reviewDays);
  return { item, version: item.versions.length, state, sentence: sentenceOf(state) };
}

/** From what is late to what is done. */
const urgency: Readonly<Record<LineState["kind"], number>> = {
  overdue: 1,
  "in-review": 2,
  "to-be-resubmitted": 3,
  awaited: 4,
  closed: 5,
};

/** The lines with what is late ahead, then what waits for an answer, what is to come again, what is awaited and what is done. */
export const byUrgency = (lines: readonly RegisterLine[]): readonly RegisterLine[] =>
  lines.toSorted(
    (one, other) =>
      (isLate(one) ? 0 : urgency[one.state.kind]) - (isLate(other) ? 0 : urgency[other.state.kind]) ||
      (one.item.due ?? "9999").localeCompare(other.item.due ?? "9999"),
  );

export const isLate = ({ state }: RegisterLine): boolean =>
  state.kind === "overdue" || (state.kind === "in-review" && state.daysOverTime > 0);

/** One sentence on the whole register: how many are closed, and which are late, on whose side. */
export function registerSentence(lines: readonly RegisterLine[]): string {
  if (lines.length === 0) return "The register is empty.";
  const closed = lines.filter(({ state }) => state.kind === "closed").length;
  const late = lines.filter(isLate);
  const names = late.map(({ item }) => `“${item.item}”`);
  return `${closed} of ${lines.length} closed${late.length === 0 ? "; nothing is late." : `; late: ${listed(names)}.`}`;
}
