import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { BriefText } from "#lib/evaluation";
import { FigureText } from "../../../_components/figure-text";
import { PageHead } from "../../../_components/page-head";
import { draftOf } from "../../../_data/draft-of";
import { loadEvaluation } from "../../../_data/load-project";
import { readersUnits } from "../../../_units";
import { pageOf } from "../_contents";
import { BriefForm } from "./_components/brief-form";

export const metadata: Metadata = { title: "Brief" };

/** A brief from before service could start later than the base date says nothing of it. */
const withMoney = (brief: BriefText): BriefText => ({ ...brief, money: { serviceStart: "0 years", ...brief.money } });

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
