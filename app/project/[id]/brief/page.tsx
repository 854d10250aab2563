import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import type { BriefText } from "#lib/evaluation";
import { hasReached, stageOf } from "#lib/procedure";
import { FigureText } from "../../../_components/figure-text";
import { PageHead } from "../../../_components/page-head";
import { draftOf } from "../../../_data/draft-of";
import { loadEvaluation } from "../../../_data/load-project";
import { readersUnits } from "../../../_units";
import { pageOf } from "../_contents";
import { BriefForm } from "./_components/brief-form";
import { withMoney } from "./_components/with-money";

export const metadata: Metadata = { title: "Brief" };

export default async function BriefPage({ params }: PageProps<"/project/[id]/brief">) {
  const { id } = await params;
  const loaded = await loadEvaluation(id);
  if (loaded === null) notFound();
  const { brief } = loaded.documents;
  const where = { project: id, kind: "brief", id: "brief" } as const;
  const draft = await draftOf<BriefText>(where);
  return (
    <>
      <PageHead {...pageOf("brief")} />
      {hasReached(stageOf(loaded.procedure), "frozen") ? (
        <p className="screen-only">
          <Link href={`/project/${id}/procedure/amend/brief`} prefetch={false}>
            Amend field, use or conventions of cost
          </Link>
        </p>
      ) : null}
      <BriefForm
        where={where}
        version={brief.version}
        values={withMoney(brief.body)}
        draft={draft && { ...draft, values: withMoney(draft.values) }}
        area={
          <FigureText project={id} of="the turfed area" figure={loaded.evaluation.area} units={await readersUnits()} />
        }
      />
    </>
  );
}
