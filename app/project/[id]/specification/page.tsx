import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { competitionSentences, issueName } from "#lib/requirement";
import { counted } from "../../../_components/in-words";
import { PageHead } from "../../../_components/page-head";
import { readersUnits } from "../../../_units";
import { pageOf } from "../_contents";
import { CompletenessList } from "./_components/completeness-list";
import { FileLinks } from "./_components/file-links";
import styles from "./_components/notes.module.css";
import { SectionText } from "./_components/section-text";
import { SpecificationPages } from "./_components/specification-pages";
import { addressesOf } from "./_drafted/addresses";
import { type LoadedSection, loadSection } from "./_drafted/load-section";

const page = pageOf("specification");

export const metadata: Metadata = { title: page.title };

const files = [
  { name: "draft.docx", label: "DOCX" },
  { name: "draft.pdf", label: "PDF" },
  { name: "draft.txt", label: "Plain text" },
  { name: "draft-with-notes.docx", label: "DOCX with notes to the specifier" },
];

export default async function SpecificationPage({ params, searchParams }: PageProps<"/project/[id]/specification">) {
  const { id } = await params;
  const [loaded, units] = await Promise.all([loadSection(id), readersUnits()]);
  if (loaded === null) notFound();
  const { section, documents, input, completeness } = loaded;
  const areNotesHidden = (await searchParams).notes === "hidden";
  const addresses = addressesOf(id, documents.requirements.body, input.requirements);
  return (
    <>
      <PageHead number={page.number} title={page.title} decide={page.decide} />
      <SpecificationPages project={id} here="draft" />
      <section aria-labelledby="standing">
        <h2 id="standing">Where it stands</h2>
        <dl className={styles.standing}>
          {standing(loaded, id, competitionSentences(loaded.competition, loaded.setting, units)[0] ?? "").map(
            ({ label, words }) => (
              <div key={label} className={styles.line}>
                <dt>{label}</dt>
                <dd>{words}</dd>
              </div>
            ),
          )}
        </dl>
        <FileLinks project={id} what="the draft" files={files} />
      </section>
      <section aria-labelledby="completeness">
        <h2 id="completeness">What the text leaves out</h2>
        {completeness.length === 0 ? (
          <p>Every limit has its method, edition, tolerance, test and remedy, and nothing contradicts itself.</p>
        ) : (
          <CompletenessList project={id} notes={completeness} addresses={addresses} />
        )}
      </section>
      <section aria-labelledby="text">
        <h2 id="text">
          The draft: Section {section.number}, {section.title.toLowerCase()}
        </h2>
        <p className="screen-only">
          {areNotesHidden ? (
            <Link href="?" scroll={false}>
              Show the notes to the specifier
            </Link>
          ) : (
            <Link href="?notes=hidden" scroll={false}>
              Hide the notes to the specifier
            </Link>
          )}
          . They are not part of the text that is given out.
        </p>
        <SectionText section={section} addresses={addresses} notes={areNotesHidden ? "hidden" : "shown"} />
      </section>
    </>
  );
}

/** What a reader wants to know before the text itself. */
function standing(loaded: LoadedSection, project: string, competition: string) {
  const { blanks, completeness, language, documents } = loaded;
  const base = `/project/${project}/specification`;
  const last = documents.issues.at(-1)?.model;
  return [
    {
      label: "Blanks",
      words:
        blanks.length === 0 ? (
          "Nothing is left to be filled in."
        ) : (
          <>
            {counted(blanks.length, "blank is", "blanks are")} left to be filled in, marked in the draft below.{" "}
            <Link href={`${base}/section`}>Choices and blanks</Link>
          </>
        ),
    },
    {
      label: "Completeness",
      words:
        completeness.length === 0 ? (
          "No note."
        ) : (
          <a href="#completeness">{counted(completeness.length, "note", "notes")} below</a>
        ),
    },
    {
      label: "Neutral language",
      words:
        language.length === 0 ? (
          <>
            No note on the draft. <Link href={`${base}/language`}>Look at a text from elsewhere</Link>
          </>
        ) : (
          <Link href={`${base}/language`}>{counted(language.length, "note on the draft", "notes on the draft")}</Link>
        ),
    },
    {
      label: "Competition",
      words: (
        <>
          {competition} <Link href={`${base}/competition`}>Competition check</Link>
        </>
      ),
    },
    {
      label: "Given out",
      words:
        last === undefined ? (
          <>
            Not yet. <Link href={`${base}/versions`}>Versions</Link>
          </>
        ) : (
          <>
            {issueName(last)}, {last.date}. <Link href={`${base}/versions`}>Versions</Link>
          </>
        ),
    },
  ];
}
