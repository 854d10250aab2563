import { printedAsText, printedSection } from "#lib/document";
import type { Issue, IssueText } from "#lib/requirement";
import { canonicalJson, sha256Of } from "#lib/store";
import { issueFrame } from "./frame";
import type { LoadedSection } from "./load-section";

const basisSeal = (requirements: unknown, specification: unknown) =>
  sha256Of(canonicalJson({ requirements, specification }));

/** The section as it stands, to be given out: its text and what it was drawn up from, each with its seal. */
export function sealedIssue(
  { section, project, documents }: LoadedSection,
  { sequence, date, reason }: Pick<IssueText, "sequence" | "date" | "reason">,
): IssueText {
  const heads = { sequence, date } as Pick<Issue, "sequence" | "date">;
  const text = printedAsText(printedSection(section, issueFrame(project.brief, heads), "without notes"));
  const requirements = documents.requirements.body;
  const specification = documents.specification?.body ?? {};
  const seals = { text: sha256Of(text), basis: basisSeal(requirements, specification) };
  return {
    ...{ sequence, date, reason, text, requirements, specification, seals },
    section: structuredClone(section) as IssueText["section"],
  };
}

/** Whether text and basis of an issue, as stored, still have the seals that stand beside them. */
export const isSealIntact = ({ text, requirements, specification, seals }: Issue): boolean =>
  sha256Of(text) === seals.text && basisSeal(requirements, specification) === seals.basis;

/** Whether criteria and clauses are still the ones that an issue was drawn up from. */
export const announcesAsItStands = (
  { requirements }: Issue,
  { documents }: Pick<LoadedSection, "documents">,
): boolean => canonicalJson(requirements) === canonicalJson(documents.requirements.body);

/** A short name for the draft as it stands, so that nobody gives out another one than the one that was looked at. */
export const draftMark = ({ section, documents }: LoadedSection): string =>
  sha256Of(
    canonicalJson({
      section,
      requirements: documents.requirements.body,
      specification: documents.specification?.body ?? {},
      issues: documents.issues.length,
    }),
  );
