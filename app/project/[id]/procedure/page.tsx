import Link from "next/link";
import { notFound } from "next/navigation";
import { completenessFacts, openBefore } from "#lib/evaluation";
import { listed } from "#lib/figure";
import { amendmentInWords, arePricesSealed, changeInWords, completeness, nextStages, stageOf } from "#lib/procedure";
import { PageHead } from "../../../_components/page-head";
import { currentActor } from "../../../_data/actor";
import { loadProject } from "../../../_data/load-project";
import { pageOf } from "../_contents";
import { CompletenessTable } from "./_components/completeness-table";
import { NextStageForm } from "./_components/next-stage-form";
import { SealedChoice } from "./_components/sealed-choice";
import { StageTable } from "./_components/stage-table";

export const metadata = { title: "Procedure" };

export default async function ProcedurePage({ params }: PageProps<"/project/[id]/procedure">) {
  const { id } = await params;
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  const { procedure, standing, project } = loaded;
  const { acts } = await currentActor(id);
  const stage = stageOf(procedure);
  const isDraft = stage === "draft";
  const bids = project.bids.map(({ id: bid, letter, bidder }) => ({ id: bid, words: `Bid ${letter}, ${bidder}` }));
  return (
    <>
      <PageHead {...pageOf("procedure")} />
      <p className="screen-only">
        <Link href={`/project/${id}/procedure/people`} prefetch={false}>
          People and roles
        </Link>
        {" · "}
        <Link href={`/project/${id}/procedure/released`} prefetch={false}>
          Released to the public
        </Link>
        {" · "}
        <Link href={`/project/${id}/record`} prefetch={false}>
          Record of everything that was changed
        </Link>
      </p>
      <StageTable procedure={procedure} bids={bids} />
      {isDraft ? (
        <>
          <h2 id="prices">Sealed prices</h2>
          <SealedChoice project={id} prices={procedure.prices} mayChoose={acts.includes("freeze-and-amend")} />
          <h2 id="completeness">Before the criteria are frozen</h2>
          <p>
            What is marked “missing” has to be there first. What is marked “look at” may be meant so; it is written down
            with the freezing, so that nobody can say it was not seen.
          </p>
          <CompletenessTable project={id} notes={completeness(completenessFacts(standing))} />
        </>
      ) : null}
      {arePricesSealed(procedure) && bids.length > 0 ? <p>{sealedInWords(loaded)}</p> : null}
      {nextStages(procedure).length === 0 ? null : <h2 id="next">What comes next</h2>}
      {nextStages(procedure).map((next) => (
        <NextStageForm
          key={next.stage}
          project={id}
          next={next}
          isSealed={procedure.prices === "sealed"}
          bids={bids}
          open={openBefore(standing, procedure, { stage: next.stage, bid: bids[0]?.id ?? "" })}
          may={acts.includes(isDraft ? "freeze-and-amend" : "move-stage")}
        />
      ))}
      {isDraft ? null : (
        <section aria-labelledby="amendments">
          <h2 id="amendments">Amendments</h2>
          {procedure.amendments.length === 0 ? <p>Nothing was amended since the criteria were frozen.</p> : null}
          <ol>
            {procedure.amendments.map((amendment, index) => (
              <li key={amendment.at}>
                <p>{amendmentInWords(amendment, index)}</p>
                <ul>
                  {amendment.changes.map((change) => (
                    <li key={change.field}>{changeInWords(change)}</li>
                  ))}
                </ul>
              </li>
            ))}
          </ol>
          {stage === "awarded" || !acts.includes("freeze-and-amend") ? null : (
            <p className="row screen-only">
              <Link href={`/project/${id}/procedure/amend/requirements`} className="button" prefetch={false}>
                Amend the requirements
              </Link>
              <Link href={`/project/${id}/procedure/amend/brief`} className="button" prefetch={false}>
                Amend field, use or conventions of cost
              </Link>
            </p>
          )}
        </section>
      )}
    </>
  );
}

/** Whose prices are in, so that nobody opens them while one is missing and is entered afterwards, with the others known. */
function sealedInWords({ project, documents }: NonNullable<Awaited<ReturnType<typeof loadProject>>>): string {
  const isIn = (bid: string) => documents.sealedPrices.some(({ id }) => id === bid);
  const named = (isWanted: boolean) => {
    const letters = project.bids.filter(({ id }) => isIn(id) === isWanted).map(({ letter }) => letter);
    return { count: letters.length, words: `bid${letters.length === 1 ? "" : "s"} ${listed(letters)}` };
  };
  const [come, missing] = [named(true), named(false)];
  if (missing.count === 0) return "Sealed prices are in for every bid.";
  if (come.count === 0) return "No sealed prices are in yet.";
  return `Sealed prices are in for ${come.words}. None are in for ${missing.words}.`;
}
