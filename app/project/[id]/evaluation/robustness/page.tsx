import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { explainStability } from "#lib/criteria";
import {
  bidsInWords,
  comparisonOf,
  explainRanking,
  methodsOf,
  valueForMoney,
  weighingCriteria,
  weighingShares,
} from "#lib/evaluation";
import { type Comparison, explainMethods } from "#lib/robustness";
import { Caution } from "../../../../_components/caution";
import { ChartFrame } from "../../../../_components/chart/chart-frame";
import { PageHead } from "../../../../_components/page-head";
import { loadEvaluation } from "../../../../_data/load-project";
import { readersUnits } from "../../../../_units";
import { inOrder, type JudgedBid, judgedBids } from "../../_components/judged-bids";
import { WeightRooms } from "../_components/weight-rooms";
import { chosenTwo } from "./_components/chosen-two";
import { DrawnRanksSection } from "./_components/drawn-ranks-section";
import { MethodsTable } from "./_components/methods-table";
import { dominanceWords, leadWords } from "./_components/sure-words";
import { TwoBids } from "./_components/two-bids";
import { ValuePlot } from "./_components/value-plot";
import { ValueTable } from "./_components/value-table";
import { valueWords } from "./_components/value-words";
import { WaysToFirst } from "./_components/ways-to-first";

export const metadata: Metadata = { title: "How firm is the order?" };

type Asked = Awaited<PageProps<"/project/[id]/evaluation/robustness">["searchParams"]>;
type Loaded = NonNullable<Awaited<ReturnType<typeof loadEvaluation>>>;

export default async function RobustnessPage({
  params,
  searchParams,
}: PageProps<"/project/[id]/evaluation/robustness">) {
  const { id } = await params;
  const loaded = await loadEvaluation(id);
  if (loaded === null) notFound();
  const { project, evaluation } = loaded;
  const ordered = inOrder(evaluation, judgedBids(project, evaluation));
  const comparison = comparisonOf(evaluation);
  return (
    <>
      <PageHead
        title="How firm is the order?"
        decide="How far the order of the bids holds when weights, claims and prices are in doubt, and what would change it."
      />
      <p className="screen-only">
        <Link href={`/project/${id}/evaluation`} prefetch={false}>
          Back to the evaluation
        </Link>
      </p>
      {comparison === null || evaluation.ranking.places.length < 2 ? (
        <>
          <p>{explainRanking(evaluation).join(" ")}</p>
          <p>
            Two bids that fail no gate, and criteria with weights, are needed before their order can be firm or not.
          </p>
        </>
      ) : (
        <Firmness id={id} loaded={loaded} ordered={ordered} comparison={comparison} asked={await searchParams} />
      )}
    </>
  );
}

async function Firmness({
  id,
  loaded: { project, evaluation },
  ordered,
  comparison,
  asked,
}: {
  id: string;
  loaded: Loaded;
  ordered: readonly JudgedBid[];
  comparison: Comparison;
  asked: Asked;
}) {
  const { currency } = project.brief.money;
  const shown = { units: await readersUnits(), currency };
  const named = ordered.map(({ evaluated, index }) => ({ id: evaluated.id, letter: evaluated.letter, index }));
  const letterOf = (bid: string) => named.find((one) => one.id === bid)?.letter ?? bid;
  const nameOf = (bid: string) => bidsInWords([letterOf(bid)]);
  const shares = weighingShares(evaluation);
  const criteria = weighingCriteria(evaluation).map(({ label }, at) => ({ label, share: shares[at] ?? 0 }));
  const { stability } = evaluation;
  const methods = methodsOf(evaluation);
  const valued = valueForMoney(evaluation);
  const pair = chosenTwo(ordered, asked);
  return (
    <>
      <p>{explainRanking(evaluation).join(" ")}</p>
      <p>{leadWords(comparison, letterOf)}</p>
      {evaluation.cautions.map((caution) => (
        <Caution key={caution}>{caution}</Caution>
      ))}
      <p>
        Points compare what bids show on the owner’s criteria. They are no measure of safety, and a firm order is still
        only as good as the criteria and the claims behind it.
      </p>

      <h2>Over many sets of weights</h2>
      <p>
        Weights are a judgement, and other people would set them otherwise. Here sets of weights are drawn at random. A
        figure that scatters is drawn too: evenly over a range, mostly near the middle of “±”, and about the figure
        where a report states a standard deviation. A claim that is open or not proven is drawn anywhere between its
        worst and its best. It shows what your own doubts amount to; it foretells nothing.
      </p>
      <DrawnRanksSection comparison={comparison} bids={named} criteria={criteria} />
      <noscript>
        <p>The draws need a browser that runs scripts. All that follows is exact and needs none.</p>
      </noscript>

      <h2>How far each weight can move</h2>
      {stability === null ? null : <p>{explainStability(stability, nameOf)}</p>}
      {stability?.kind === "led" && stability.rooms.length > 0 ? (
        <>
          <p>
            Each weight is moved alone; the others keep their proportions. The bar is the room it has, the upright mark
            is where it stands.
          </p>
          <WeightRooms project={id} rooms={stability.rooms} />
        </>
      ) : null}

      <h2>What no weights can change</h2>
      {dominanceWords(comparison, letterOf).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}

      <h2>What would have to be true</h2>
      <p>
        For each bid that is not first: the smallest change of a figure, the price or a weight that would, alone, make
        it level with the first, all else as entered. It says how far apart the bids are, and asks nobody to change a
        figure.
      </p>
      <WaysToFirst project={project} evaluation={evaluation} ordered={ordered} shown={shown} />

      {pair === null ? null : (
        <section id="two-bids" aria-labelledby="two-bids-head">
          <h2 id="two-bids-head">Two bids, one against the other</h2>
          <TwoBids project={project} evaluation={evaluation} bids={ordered} pair={pair} shown={shown} />
        </section>
      )}

      {methods === null ? null : (
        <>
          <h2>Other ways to decide</h2>
          <p>{explainMethods(methods, (bid) => `Bid ${letterOf(bid)}`)}</p>
          <MethodsTable check={methods} letterOf={letterOf} currency={currency} />
          <p className="soft">
            A cost known only as “at least” counts here with what is known. “Points” other than the owner’s score leave
            out cost.
          </p>
        </>
      )}

      {valued.length === 0 ? null : (
        <ChartFrame
          title="Points beside money"
          summary={`${valueWords(valued, letterOf)} An upright stroke is what open figures may add or take; an arrow to the right is a cost known only as “at least”; a cross fails a gate.`}
          draw={(size) => <ValuePlot valued={valued} bids={named} currency={currency} size={size} />}
          table={<ValueTable valued={valued} bids={named} currency={currency} />}
        />
      )}
    </>
  );
}
