import type { SectionFrame } from "#lib/document";
import type { Brief } from "#lib/evaluation";
import { freezingStep, type Procedure, procedureSentences } from "#lib/procedure";
import { type Issue, issueName } from "#lib/requirement";

const dateInWords = (date: string) =>
  new Intl.DateTimeFormat("en-US", { dateStyle: "long", timeZone: "UTC" }).format(new Date(`${date}T00:00:00Z`));

type Heads = Pick<Brief, "owner" | "name" | "notice">;

const frame = ({ owner, name, notice }: Heads, stand: string, date: string): SectionFrame => ({
  ...{ owner, notice, stand, date },
  project: name,
  procedure: [],
});

/** How far the procedure of a project has come, and when its record begins. */
type Kept = Readonly<{ procedure: Procedure; summary: Readonly<{ createdAt: string }> }>;

/** What had come of stages and amendments by the end of a day; nothing while the criteria were not frozen. */
function sentencesBy({ procedure, summary }: Kept, day: string): readonly string[] {
  const come = <T extends Readonly<{ at: string }>>(all: readonly T[]) =>
    all.filter(({ at }) => at.slice(0, 10) <= day);
  const then = { ...procedure, steps: come(procedure.steps), amendments: come(procedure.amendments) };
  return freezingStep(then) === null ? [] : procedureSentences(then, summary.createdAt);
}

/** What stands on a draft beside its text. */
export const draftFrame = (brief: Heads, kept: Kept, today: string): SectionFrame => ({
  ...frame(brief, `Draft of ${dateInWords(today)}`, today),
  procedure: sentencesBy(kept, today),
});

/** What stands on a section as it was given out; the text is sealed, so nothing is said beside it. */
export const issueFrame = (brief: Heads, issue: Pick<Issue, "sequence" | "date">): SectionFrame =>
  frame(brief, `${issueName(issue)}, ${dateInWords(issue.date)}`, issue.date);

/** What stands on an addendum: the amendments up to its day as well. */
export const addendumFrame = (brief: Heads, issue: Pick<Issue, "sequence" | "date">, kept: Kept): SectionFrame => ({
  ...issueFrame(brief, issue),
  procedure: sentencesBy(kept, issue.date),
});
