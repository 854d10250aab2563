import Link from "next/link";
import { notFound } from "next/navigation";
import { type SheetText, scoringOf, startingCommittee } from "#lib/committee";
import { dayOf } from "#lib/procedure";
import { PageHead } from "../../../../_components/page-head";
import { currentActor } from "../../../../_data/actor";
import { draftOf } from "../../../../_data/draft-of";
import { loadProject } from "../../../../_data/load-project";
import { LevelList } from "../_components/rated-criteria";
import { filledSheet } from "./_components/filled-sheet";
import { SheetForm } from "./_components/sheet-form";

export const metadata = { title: "Scoresheet" };

export default async function ScoresheetPage({ params }: PageProps<"/project/[id]/committee/scoresheet">) {
  const { id } = await params;
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  const { project, documents } = loaded;
  const { committee = startingCommittee, people = [] } = project;
  const actor = await currentActor(id);
  const scoresheets = documents.scoresheets.map(({ model }) => model);
  const { stage } = scoringOf(people, scoresheets, committee);
  const rated = project.requirements.criteria.filter(({ valueFunction }) => valueFunction.kind === "rating");
  const head = (
    <>
      <p className="screen-only">
        <Link href={`/project/${id}/committee`}>Committee</Link>
      </p>
      <PageHead
        title={actor.acts.includes("score") ? `Scoresheet of ${actor.name}` : "Scoresheet"}
        decide="What you make of each bid, by the descriptions of the levels alone and before you know what others say."
      />
    </>
  );
  if (stage === "opened")
    return (
      <>
        {head}
        <p>
          The scoresheets are open and can’t be changed any more.{" "}
          <Link href={`/project/${id}/committee/consensus`}>Read them on the consensus sheet.</Link>
        </p>
      </>
    );
  if (!actor.acts.includes("score"))
    return (
      <>
        {head}
        <p>
          Only a person with the role “evaluator” has a scoresheet.{" "}
          <Link href={`/project/${id}/procedure/people`}>Say who you are</Link>, if you are one of them.
        </p>
      </>
    );
  const where = { project: id, kind: "scoresheet", id: actor.id } as const;
  const stored = documents.scoresheets.find((sheet) => sheet.id === actor.id);
  const draft = await draftOf<SheetText>(where);
  const bids = project.bids.map(({ id: bid, letter, bidder, system }) => ({ id: bid, letter, bidder, system }));
  const ids = bids.map((bid) => bid.id);
  const empty = filledSheet(null, rated, ids);
  return (
    <>
      {head}
      {stored === undefined ? null : (
        <p role="status">
          You handed this sheet in on {dayOf(stored.model.handedInAt)}. Until the sheets are opened you may change it; a
          change counts once you hand it in again.
        </p>
      )}
      <SheetForm
        project={id}
        where={where}
        version={stored?.version ?? 0}
        values={empty}
        // one’s own sheet goes on from wherever it was left, whichever version was handed in meanwhile
        draft={draft && { basedOn: stored?.version ?? 0, values: filledSheet(draft.values, rated, ids) }}
        criteria={rated.map((criterion) => ({
          criterion,
          levels: <LevelList criterion={criterion} />,
        }))}
        bids={bids}
      />
    </>
  );
}
