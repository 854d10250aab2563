import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import type { RequirementsText } from "#lib/evaluation";
import { hasReached, stageOf } from "#lib/procedure";
import { Caution } from "../../../_components/caution";
import { PageHead } from "../../../_components/page-head";
import { draftOf } from "../../../_data/draft-of";
import { loadEvaluation } from "../../../_data/load-project";
import { readersUnits } from "../../../_units";
import { pageOf } from "../_contents";
import { RequirementsForm } from "./_components/requirements-form";
import { requirementsParts } from "./_components/requirements-parts";
import { withOutlook } from "./_components/with-outlook";

const page = pageOf("requirements");

export const metadata: Metadata = { title: page.title };

export default async function RequirementsPage({ params }: PageProps<"/project/[id]/requirements">) {
  const { id } = await params;
  const loaded = await loadEvaluation(id);
  if (loaded === null) notFound();
  const { project, documents, evaluation, procedure } = loaded;
  const where = { project: id, kind: "requirements", id: "requirements" } as const;
  const draft = await draftOf<RequirementsText>(where);
  return (
    <>
      <PageHead number={page.number} title={page.title} decide={page.decide} />
      {evaluation.cautions.map((caution) => (
        <Caution key={caution}>{caution}</Caution>
      ))}
      {hasReached(stageOf(procedure), "frozen") ? (
        <p className="screen-only">
          <Link href={`/project/${id}/procedure/amend/requirements`} prefetch={false}>
            Amend the requirements
          </Link>
        </p>
      ) : null}
      <RequirementsForm
        where={where}
        version={documents.requirements.version}
        values={withOutlook(documents.requirements.body)}
        draft={draft && { ...draft, values: withOutlook(draft.values) }}
        {...requirementsParts(project, evaluation, await readersUnits())}
      />
    </>
  );
}
