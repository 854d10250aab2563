import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { costSwings, linesModel, uncertainInputs } from "#lib/cost";
import { lackingSentences } from "#lib/document";
import { intervalOfFigure } from "#lib/figure";
import { PageHead } from "../../../../_components/page-head";
import { costingStart } from "../../../../_data/costing-start";
import { loadEvaluation } from "../../../../_data/load-project";
import { CostPages } from "../_components/cost-pages";
import { pricedArea } from "../_components/priced-bid";
import { DrawnResults } from "./_components/drawn-results";
import { Swings } from "./_components/swings";
import { UncertaintyForm } from "./_components/uncertainty-form";
import { filledUncertainty } from "./_components/uncertainty-values";

export const metadata: Metadata = { title: "Uncertainty of cost" };

export default async function UncertaintyPage({ params }: PageProps<"/project/[id]/cost/uncertainty">) {
  const { id } = await params;
  const loaded = await loadEvaluation(id);
  if (loaded === null) notFound();
  const { project, documents, evaluation } = loaded;
  const { currency, realRate } = project.brief.money;
  const priced = evaluation.bids.flatMap(({ id: bid, letter, cost }, index) => {
    const entered = intervalOfFigure(cost.presentValue)?.low;
    const lines = cost.lines.map(({ line }) => line);
    const isLeast = cost.presentValue.kind === "at-least";
    return entered === undefined ? [] : [{ id: bid, letter, index, entered, isLeast, lines }];
  });
  const lines = priced.map(({ id: bid, lines: counted }) => ({ bid, lines: counted }));
  const { uncertainty } = project.costing;
  const { inputs, notes } = uncertainInputs(lines, uncertainty, realRate.value);
  const setting = { area: pricedArea(evaluation), conventions: project.brief.money };
  const named = priced.map(({ id: bid, letter, lines: counted }) => ({
    ...{ id: bid, letter },
    lines: counted.map(({ id: line, label, kind }) => ({ id: line, label, hasLife: kind === "replacement-chain" })),
  }));
  return (
    <>
      <PageHead
        title="Uncertainty of cost"
        decide="How far the costs may lie from the entered ones, and how sure the cheapest bid is to stay the cheapest."
      />
      <CostPages project={id} here="uncertainty" />
      {priced.length === 0 ? (
        <p>
          No bid has a price of its own yet. <Link href={`/project/${id}/bids`}>Enter the prices first</Link>.
        </p>
      ) : (
        <>
          <UncertaintyForm start={await costingStart(id, documents.costing, filledUncertainty)} bids={named} />
          {notes.map((note) => (
            <p key={note}>{note}</p>
          ))}
          {inputs.length === 0 ? null : (
            <>
              <h2>What comes out</h2>
              <p>
                All figures above are drawn at random again and again, the same luck for every bid, and each time all
                bids are costed. It shows what your own doubts amount to; it foretells nothing.
              </p>
              {evaluation.bids.flatMap(lackingSentences).map((sentence) => (
                <p key={sentence}>{sentence}</p>
              ))}
              <DrawnResults
                order={{ bids: lines, inputs, setting, seed: uncertainty.seed, samples: uncertainty.samples }}
                bids={priced.map(({ lines: _, ...bid }) => bid)}
                currency={currency}
              />
              <h2>What moves the cost most</h2>
              <p>
                Each figure alone at its low and its high end, exceeded in 9 and in 1 of 10 draws; everything else as
                entered, and every bid costed anew. The light part of a bar is the low end of the figure, the dark part
                its high end; the thick rule is the cost as entered. All drawings share one scale.
              </p>
              <Swings swings={costSwings(linesModel(lines, inputs, setting))} bids={priced} currency={currency} />
            </>
          )}
        </>
      )}
    </>
  );
}
