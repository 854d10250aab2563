import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { RequirementsText } from "#lib/evaluation";
import type { NumberedParagraph, NumberedSection, Requirement } from "#lib/requirement";
import { PageHead } from "../../../../_components/page-head";
import { documentStart } from "../../../../_data/document-start";
import { Paragraphs } from "../_components/section-text";
import { SpecificationPages } from "../_components/specification-pages";
import { type LoadedSection, loadSection } from "../_drafted/load-section";
import { type ClausesValues, filledClauses } from "./_components/clause-values";
import { ClausesForm } from "./_components/clauses-form";

export const metadata: Metadata = { title: "Clauses" };

export default async function ClausesPage({ params }: PageProps<"/project/[id]/specification/clauses">) {
  const { id } = await params;
  const loaded = await loadSection(id);
  if (loaded === null) notFound();
  const { documents, input } = loaded;
  const start = await documentStart<RequirementsText, ClausesValues>(
    { project: id, kind: "requirements", id: "requirements" },
    documents.requirements,
    documents.requirements.body,
    filledClauses,
  );
  return (
    <>
      <PageHead
        title="Clauses"
        decide="What each requirement rests on: method and edition, condition, tolerance, tests, and what follows when it is missed."
      />
      <SpecificationPages project={id} here="clauses" />
      <ClausesForm
        project={id}
        start={start}
        previews={previewsOf(loaded)}
        notes={notesOf(loaded, input.requirements)}
      />
    </>
  );
}

/** Criteria keep their id while a clause beside them may still have to get one. */
const keyOf = ({ id, criterion }: Requirement) => criterion?.id ?? id;

const articlesOf = ({ parts, appendices }: NumberedSection) => [
  ...parts.flatMap(({ articles }) => articles),
  ...appendices,
];

/** A paragraph with all that hangs below it. */
function withBelow(paragraphs: readonly NumberedParagraph[], at: number): readonly NumberedParagraph[] {
  const level = paragraphs[at]?.level ?? 0;
  const end = paragraphs.findIndex((paragraph, index) => index > at && paragraph.level <= level);
  return paragraphs
    .slice(at, end === -1 ? undefined : end)
    .map((paragraph) => ({ ...paragraph, level: paragraph.level - level }));
}

function previewsOf({ section, input }: LoadedSection): Readonly<Record<string, React.ReactNode>> {
  return Object.fromEntries(
    articlesOf(section).flatMap(({ number, paragraphs }) =>
      paragraphs.flatMap(({ from }, index) => {
        const requirement = input.requirements.find(({ id }) => id === from);
        if (requirement === undefined) return [];
        const key = keyOf(requirement);
        return [[key, <Paragraphs key={key} article={number} paragraphs={withBelow(paragraphs, index)} />] as const];
      }),
    ),
  );
}

function notesOf({ completeness }: LoadedSection, requirements: readonly Requirement[]) {
  return Object.fromEntries(
    requirements.map((requirement) => [
      keyOf(requirement),
      completeness.filter(({ requirements: about }) => about.includes(requirement.id)).map(({ sentence }) => sentence),
    ]),
  );
}
