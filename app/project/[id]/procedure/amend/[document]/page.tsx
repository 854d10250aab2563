import Link from "next/link";
import { notFound } from "next/navigation";
import { amendedFields, type BriefText, type RequirementsText } from "#lib/evaluation";
import { hasReached, stageOf } from "#lib/procedure";
import { FigureText } from "../../../../../_components/figure-text";
import { ClosedKinds } from "../../../../../_components/form/closed";
import { PageHead } from "../../../../../_components/page-head";
import { currentActor } from "../../../../../_data/actor";
import { draftOf } from "../../../../../_data/draft-of";
import { loadEvaluation } from "../../../../../_data/load-project";
import { readersUnits } from "../../../../../_units";
import { BriefForm } from "../../../brief/_components/brief-form";
import { withMoney } from "../../../brief/_components/with-money";
import { RequirementsForm } from "../../../requirements/_components/requirements-form";
import { requirementsParts } from "../../../requirements/_components/requirements-parts";
import { withOutlook } from "../../../requirements/_components/with-outlook";
import { keepAmendment } from "../../actions";
import { AmendmentForm } from "./_components/amendment-form";

export const metadata = { title: "Amendment" };

const titles = {
  requirements: "Amend the requirements",
  brief: "Amend field, use or conventions of cost",
} as const;

const isAmendable = (document: string): document is keyof typeof titles => Object.hasOwn(titles, document);

/** What is frozen, to be changed with a reason. Nothing here counts before it is recorded at the end of the page. */
export default async function AmendPage({ params }: PageProps<"/project/[id]/procedure/amend/[document]">) {
  const { id, document } = await params;
  const loaded = isAmendable(document) ? await loadEvaluation(id) : null;
  if (loaded === null || !isAmendable(document)) notFound();
  const { procedure } = loaded;
  const stage = stageOf(procedure);
  const { acts } = await currentActor(id);
  const head = (
    <>
      <p className="screen-only">
        <Link href={`/project/${id}/procedure`}>Procedure</Link>
      </p>
      <PageHead
        title={titles[document]}
        decide="What was frozen changes with a reason that stands on every later page and document."
      />
    </>
  );
  if (!hasReached(stage, "frozen") || stage === "awarded" || !acts.includes("freeze-and-amend"))
    return (
      <>
        {head}
        <p>
          {hasReached(stage, "frozen")
            ? "This can’t be amended here: either the award is made, or amending is not among your roles."
            : "Nothing is frozen yet, so it can be changed on its own page."}
        </p>
      </>
    );
  const where = { project: id, kind: document, id: document } as const;
  const draft = await draftOf<unknown>(where);
  const units = await readersUnits();
  const { version } = loaded.documents[document];
  const shown = (text: unknown) =>
    document === "brief" ? withMoney(text as BriefText) : withOutlook(text as RequirementsText);
  const goesOn = draft !== null && draft.basedOn === version;
  const changes = goesOn
    ? amendedFields(procedure, document, { from: shown(loaded.documents[document].body), to: draft.values })
    : [];
  return (
    <>
      {head}
      <ClosedKinds kinds={{}}>
        {document === "brief" ? (
          <BriefForm
            where={where}
            version={version}
            values={withMoney(loaded.documents.brief.body)}
            draft={draft && { ...draft, values: withMoney(draft.values as BriefText) }}
            save={keepAmendment}
            area={<FigureText project={id} of="the turfed area" figure={loaded.evaluation.area} units={units} />}
          />
        ) : (
          <RequirementsForm
            where={where}
            version={version}
            values={withOutlook(loaded.documents.requirements.body)}
            draft={draft && { ...draft, values: withOutlook(draft.values as RequirementsText) }}
            save={keepAmendment}
            {...requirementsParts(loaded.project, loaded.evaluation, units)}
          />
        )}
      </ClosedKinds>
      <AmendmentForm project={id} document={document} version={version} changes={changes} />
    </>
  );
}
