import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { dayOf, freezingStep } from "#lib/procedure";
import { comparedSections, type Issue, issueId, issueName } from "#lib/requirement";
import { counted } from "../../../../_components/in-words";
import { PageHead } from "../../../../_components/page-head";
import { FileLinks } from "../_components/file-links";
import { SectionChanges } from "../_components/section-changes";
import { SpecificationPages } from "../_components/specification-pages";
import { type LoadedSection, loadSection } from "../_drafted/load-section";
import { announcesAsItStands, draftMark, isSealIntact } from "../_drafted/sealed-issue";
import { IssueForm } from "./_components/issue-form";
import styles from "./_components/versions.module.css";

export const metadata: Metadata = { title: "Versions" };

export default async function VersionsPage({ params }: PageProps<"/project/[id]/specification/versions">) {
  const { id } = await params;
  const loaded = await loadSection(id);
  if (loaded === null) notFound();
  const issues = loaded.documents.issues.map(({ model, updatedBy }) => ({ issue: model, by: updatedBy }));
  return (
    <>
      <PageHead
        title="Versions"
        decide="What was given out and when, what each addendum changed, and what would change next."
      />
      <SpecificationPages project={id} here="versions" />
      <NextIssue project={id} loaded={loaded} last={issues.at(-1)?.issue ?? null} />
      {issues.length === 0 ? null : (
        <section aria-labelledby="given-out">
          <h2 id="given-out">Given out</h2>
          <p>
            Text, criteria and clauses are kept as they stood and sealed by SHA-256. The record of the project holds the
            same, chained to all that happened before and after. To check a text by yourself, work out the SHA-256 of
            the plain text file.
          </p>
          <p>{againstFreeze(loaded, issues.at(-1)?.issue ?? null)}</p>
          {issues.toReversed().map(({ issue, by }) => (
            <Given
              key={issue.sequence}
              project={id}
              issue={issue}
              by={by}
              before={issues.find((other) => other.issue.sequence === issue.sequence - 1)?.issue ?? null}
            />
          ))}
        </section>
      )}
    </>
  );
}

/** Whether what bidders were told is what bids will be judged by. */
function againstFreeze(loaded: LoadedSection, last: Issue | null): string {
  const frozen = freezingStep(loaded.procedure);
  const name = last === null ? "" : issueName(last);
  if (last !== null && !announcesAsItStands(last, loaded))
    return `Criteria or clauses have changed since ${name}: bidders do not know it before an addendum says so.`;
  return frozen === null
    ? `Criteria and clauses stand as ${name} gives them. They are not frozen yet.`
    : `Criteria and clauses, frozen on ${dayOf(frozen.at)}, stand as ${name} gives them.`;
}

/** What could be given out next, and what it would change. */
function NextIssue({ project, loaded, last }: { project: string; loaded: LoadedSection; last: Issue | null }) {
  const { section, blanks, completeness, language } = loaded;
  const changes = last === null ? null : comparedSections(last.section, section);
  const name = issueName({ sequence: last === null ? 0 : last.sequence + 1 });
  const today = new Date().toISOString().slice(0, 10);
  const open = [
    blanks.length === 0 ? "" : counted(blanks.length, "blank", "blanks"),
    completeness.length === 0 ? "" : counted(completeness.length, "note on completeness", "notes on completeness"),
    language.length === 0 ? "" : counted(language.length, "note on language", "notes on language"),
  ].filter((part) => part !== "");
  return (
    <section aria-labelledby="next">
      <h2 id="next">{last === null ? "To be given out" : "The draft against what was given out last"}</h2>
      {changes === null ? (
        <p>
          Nothing is given out yet. What is given out first is the issue for bids; later changes are addenda, each told
          word by word.
        </p>
      ) : (
        <SectionChanges changes={changes} />
      )}
      <p>
        {open.length === 0
          ? "The draft has no blank and no note."
          : `The draft has ${open.join(", ")}. They do not keep it from being given out, but every bidder will read it as it is.`}{" "}
        <Link href={`/project/${project}/specification`}>Read the draft</Link>
      </p>
      {changes !== null && changes.length === 0 ? (
        <p>There is nothing to give out: no word differs from {last === null ? "" : issueName(last)}.</p>
      ) : (
        <IssueForm
          key={name}
          project={project}
          name={name}
          today={today}
          seen={draftMark(loaded)}
          blanks={blanks.length}
          isAddendum={last !== null}
        />
      )}
    </section>
  );
}

const filesOf = (sequence: number, kind: "issue" | "changes") =>
  (["docx", "pdf", "txt"] as const).map((ending) => ({
    name: `${kind}-${sequence}.${ending}`,
    label: `${kind === "changes" ? "Changes, " : ""}${{ docx: "DOCX", pdf: "PDF", txt: "plain text" }[ending]}`,
  }));

/** One version as it was given out. */
function Given({ project, issue, by, before }: { project: string; issue: Issue; by: string; before: Issue | null }) {
  const { sequence, date, reason, seals } = issue;
  const name = issueName(issue);
  return (
    <section id={issueId(sequence)} className={styles.version} aria-label={name}>
      <h3>
        {name}, {date}
      </h3>
      <p>
        Given out by {by}.{reason === "" ? "" : ` Reason: ${reason}`}
      </p>
      <dl className={styles.seals}>
        <div>
          <dt>Text, SHA-256</dt>
          <dd>{seals.text}</dd>
        </div>
        <div>
          <dt>Criteria and clauses, SHA-256</dt>
          <dd>{seals.basis}</dd>
        </div>
      </dl>
      <p>
        {isSealIntact(issue)
          ? "Worked out anew just now, both are the same."
          : "Worked out anew just now, they differ: what is stored is not what was given out. Verify the record of the project."}
      </p>
      <FileLinks project={project} what={name} files={filesOf(sequence, "issue")} />
      {before === null ? null : (
        <details>
          <summary>What it changes against {issueName(before)}</summary>
          <FileLinks project={project} what={`the changes of ${name}`} files={filesOf(sequence, "changes")} />
          <SectionChanges changes={comparedSections(before.section, issue.section)} />
        </details>
      )}
    </section>
  );
}
