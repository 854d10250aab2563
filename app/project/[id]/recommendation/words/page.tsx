import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { type BoardPart, boardPaper } from "#lib/document";
import type { OwnersWordsText } from "#lib/evaluation";
import { paperParts } from "#lib/recommendation";
import { PageHead } from "../../../../_components/page-head";
import { draftOf } from "../../../../_data/draft-of";
import { loadEvaluation } from "../../../../_data/load-project";
import { readersUnits } from "../../../../_units";
import { gradeWords } from "../_components/grade-words";
import { filledWords } from "./_components/filled-words";
import type { EditedPart } from "./_components/part-fields";
import { WordsForm } from "./_components/words-form";

export const metadata: Metadata = { title: "Your words in the paper" };

const editedPart = ({ part, heading, lines, beside, written, wordsGrade }: BoardPart): EditedPart => ({
  part,
  heading,
  lines,
  beside,
  written,
  reading: wordsGrade === null ? "" : gradeWords(wordsGrade),
});

export default async function WordsPage({ params }: PageProps<"/project/[id]/recommendation/words">) {
  const { id } = await params;
  const [loaded, units] = await Promise.all([loadEvaluation(id), readersUnits()]);
  if (loaded === null) notFound();
  const { project, evaluation, documents, ownersWords } = loaded;
  const where = { project: id, kind: "recommendation", id: "recommendation" } as const;
  const draft = await draftOf<OwnersWordsText>(where);
  const { parts } = boardPaper(project, evaluation, ownersWords, units);
  return (
    <>
      <PageHead
        title="Your words in the paper"
        decide="Which parts of the board’s paper stay as generated, and where you write beside or in place of them."
      />
      <p className="screen-only">
        <Link href={`/project/${id}/recommendation`} prefetch={false}>
          Back to the recommendation
        </Link>
      </p>
      <p>
        Each part is made from the evaluation and follows it. What you write stays as you wrote it and is marked as
        yours, on screen and on paper. Cautions about safety always stand.
      </p>
      <WordsForm
        where={where}
        version={documents.recommendation?.version ?? 0}
        values={filledWords(documents.recommendation?.body ?? {})}
        draft={draft && { ...draft, values: filledWords(draft.values) }}
        parts={paperParts.map((part) => editedPart(parts[part]))}
      />
    </>
  );
}
