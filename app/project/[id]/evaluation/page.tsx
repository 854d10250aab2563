import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { explainStability } from "#lib/criteria";
import { bidsInWords, criteriaOf, explainRanking, openQuestions, peoplesOrders } from "#lib/evaluation";
import { Caution } from "../../../_components/caution";
import { ChartFrame } from "../../../_components/chart/chart-frame";
import { PageHead } from "../../../_components/page-head";
import { loadEvaluation } from "../../../_data/load-project";
import { readersUnits } from "../../../_units";
import { inOrder, judgedBids } from "../_components/judged-bids";
import { pageOf } from "../_contents";
import { Changes } from "./_components/changes";
import { ContributionsChart, ContributionsKey, ContributionsTable } from "./_components/contributions-chart";
import { GatesTable } from "./_components/gates-table";
import { PeoplesTable } from "./_components/peoples-table";
import { RankingList } from "./_components/ranking-list";
import { ScoresTable } from "./_components/scores-table";
import { TotalsChart, TotalsTable } from "./_components/totals-chart";
import { ValueCurves } from "./_components/value-curves";
import { WeightRooms } from "./_components/weight-rooms";

const page = pageOf("evaluation");

export const metadata: Metadata = { title: page.title };

export default async function EvaluationPage({ params }: PageProps<"/project/[id]/evaluation">) {
  const { id } = await params;
  const loaded = await loadEvaluation(id);
  if (loaded === null) notFound();
  const { project, evaluation } = loaded;
  const head = <PageHead number={page.number} title={page.title} decide={page.decide} />;
  if (evaluation.bids.length === 0 || project.requirements.criteria.length === 0) {
    return (
      <>
        {head}
        <NothingToJudge project={id} lacks={evaluation.bids.length === 0 ? "bids" : "criteria"} />
      </>
    );
  }

  const units = await readersUnits();
  const bids = judgedBids(project, evaluation);
  const ordered = inOrder(evaluation, bids);
  const places = new Map(evaluation.ranking.places.map(({ bid, place }) => [bid, place]));
  const indexOf = (bid: string) =>
    Math.max(
      0,
      bids.findIndex(({ evaluated }) => evaluated.id === bid),
    );
  const nameOf = (bid: string) => bidsInWords([bids[indexOf(bid)]?.evaluated.letter ?? bid]);
  const { stability } = evaluation;
  const orders = peoplesOrders(project.requirements, evaluation);
  const isWeighed = ordered.some(({ evaluated }) => evaluated.score.total !== null);

  return (
    <>
      {head}
      <p>{explainRanking(evaluation).join(" ")}</p>
      {evaluation.cautions.map((caution) => (
        <Caution key={caution}>{caution}</Caution>
      ))}

      <h2>Order of the bids</h2>
      <RankingList project={id} bids={ordered} places={places} />

      <h2>Gates</h2>
      <p>A gate comes before any points. A bid that fails one has no place, however many points it has.</p>
      <GatesTable project={id} bids={bids} units={units} />

      {isWeighed ? (
        <>
          <h2>Scores</h2>
          <p>
            Each figure has a value from 0 to 100 on anchors that the owner set. The value times the weight is what the
            figure adds. A missing figure may be worth anything from its worst to its best.
          </p>
          <ScoresTable project={id} bids={bids} units={units} />
          <ChartFrame
            title="Totals"
            summary="A bar runs from the least to the most points a bid may have; the upright mark is its likely total. Where two bars overlap, the order of the two is not settled."
            draw={(size) => <TotalsChart bids={ordered} size={size} />}
            table={<TotalsTable bids={ordered} />}
          />
          <ChartFrame
            title="What each criterion adds"
            summary="Solid parts are certain, hatched parts are open. The numbers are those of the criteria listed below."
            draw={(size) => <ContributionsChart bids={ordered} size={size} />}
            table={<ContributionsTable bids={ordered} />}
          />
          <ContributionsKey bids={ordered} />

          {orders === null ? null : (
            <>
              <h2>By each person’s own weights</h2>
              <p>The mean of these weights is what counts above. Gates and values are the same for all.</p>
              <PeoplesTable orders={orders} bids={bids} />
            </>
          )}

          <h2>How firm the weights are</h2>
          {stability === null ? null : <p>{explainStability(stability, nameOf)}</p>}
          {stability?.kind === "led" && stability.rooms.length > 0 ? (
            <>
              <p>
                Each weight is moved alone; the others keep their proportions. The bar is the room it has, the upright
                mark is where it stands.
              </p>
              <WeightRooms project={id} rooms={stability.rooms} />
            </>
          ) : null}

          <p>
            <Link href={`/project/${id}/evaluation/robustness`} prefetch={false}>
              How firm is the order?
            </Link>{" "}
            Over many sets of weights, bid against bid, and what would have to be true for another bid to come first.
          </p>

          <h2>What would change the answer</h2>
          <Changes project={id} openings={openQuestions(evaluation)} indexOf={indexOf} />

          <h2>From figure to value</h2>
          <p>
            The line is the owner’s, set without looking at any bid. A dot is where a bid stands; a broad stroke is the
            range its figure may lie in.
          </p>
          <ValueCurves criteria={criteriaOf(project)} bids={bids} units={units} />
        </>
      ) : (
        <p>
          No criterion carries weight.{" "}
          <Link href={`/project/${id}/requirements`} prefetch={false}>
            Give the criteria weights
          </Link>{" "}
          to put the bids in order.
        </p>
      )}
    </>
  );
}

function NothingToJudge({ project, lacks }: { project: string; lacks: "bids" | "criteria" }) {
  return lacks === "bids" ? (
    <p>
      There is no bid to evaluate yet.{" "}
      <Link href={`/project/${project}/bids`} prefetch={false}>
        Enter the bids
      </Link>
      , each claim as it is written. This page then shows which of them pass every gate, in which order they stand, and
      how far that order is settled.
    </p>
  ) : (
    <p>
      There is no criterion to judge the bids by yet.{" "}
      <Link href={`/project/${project}/requirements`} prefetch={false}>
        Set the criteria
      </Link>
      : what every bid must meet, and what counts for how much.
    </p>
  );
}
