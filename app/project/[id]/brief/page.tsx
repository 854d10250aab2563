import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { FigureText } from "../../../_components/figure-text";
import { PageHead } from "../../../_components/page-head";
import { draftOf } from "../../../_data/draft-of";
import { loadEvaluation } from "../../../_data/load-project";
import { readersUnits } from "../../../_units";
import { pageOf } from "../_contents";
import { BriefForm } from "./_components/brief-form";

export const metadata: Metadata = { title: "Brief" };

export default async function BriefPage({ params }: PageProps<"/project/[id]/brief">) {
  const { id } = await params;
  const loaded = await loadEvaluation(id);
  if (loaded === null) notFound();
  const { brief } = loaded.documents;
  const where = { project: id, kind: "brief", id: "brief" } as const;
  return (
    <>
      <PageHead {...pageOf("brief")} />
      <BriefForm
        where={where}
        version={brief.version}
        values={brief.body}
        draft={await draftOf(where)}
        area={
          <FigureText project={id} of="the turfed area" figure={loaded.evaluation.area} units={await readersUnits()} />
        }
      />
    </>
  );
}
