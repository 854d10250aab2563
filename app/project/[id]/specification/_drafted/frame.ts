import type { SectionFrame } from "#lib/document";
import type { Brief } from "#lib/evaluation";
import { type Issue, issueName } from "#lib/requirement";

const dateInWords = (date: string) =>
  new Intl.DateTimeFormat("en-US", { dateStyle: "long", timeZone: "UTC" }).format(new Date(`${date}T00:00:00Z`));

type Heads = Pick<Brief, "owner" | "name" | "notice">;

const frame = ({ owner, name, notice }: Heads, stand: string, date: string): SectionFrame => ({
  ...{ owner, notice, stand, date },
  project: name,
});

/** What stands on a draft beside its text. */
export const draftFrame = (brief: Heads, today: string): SectionFrame =>
  frame(brief, `Draft of ${dateInWords(today)}`, today);

/** What stands on a section as it was given out. */
export const issueFrame = (brief: Heads, issue: Pick<Issue, "sequence" | "date">): SectionFrame =>
  frame(brief, `${issueName(issue)}, ${dateInWords(issue.date)}`, issue.date);
