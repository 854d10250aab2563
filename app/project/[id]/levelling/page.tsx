import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import type { CostingText } from "#lib/evaluation";
import { PageHead } from "../../../_components/page-head";
import { costingStart } from "../../../_data/costing-start";
import { loadEvaluation } from "../../../_data/load-project";
import { readersUnits } from "../../../_units";
import { pageOf } from "../_contents";
import type { CostedBid } from "./_components/costed-bid";
import { LevelledTotals } from "./_components/levelled-totals";
import { filledLevelling } from "./_components/levelled-values";
import { LevellingForm } from "./_components/levelling-form";
import { NotCounted } from "./_components/not-counted";
import { PriceNotes } from "./_components/price-notes";
import { StandIns } from "./_components/stand-ins";

const page = pageOf("levelling");

export const metadata: Metadata = { title: page.title };

export default async function LevellingPage({ params }: PageProps<"/project/[id]/levelling">) {
  const { id } = await params;
  const loaded = await loadEvaluation(id);
  if (loaded === null) notFound();
  const { project, documents, evaluation } = loaded;
  const units = await readersUnits();
  const costed = evaluation.bids.map((bid, index): CostedBid => ({ ...bid, index }));
  const bids = project.bids.map((bid) => ({
    id: bid.id,
    letter: bid.letter,
    lines: bid.prices.filter(({ givenBy }) => givenBy === "bid").map((line) => ({ id: line.id, label: line.label })),
  }));
  const filled = (costing: CostingText) => filledLevelling(costing, bids);
  return (
    <>
      <PageHead {...page} />
      {bids.length === 0 ? (
        <p>
          There is nothing to level yet. <Link href={`/project/${id}/bids`}>Add the bids first</Link>.
        </p>
      ) : (
        <>
          <h2>As bid and levelled</h2>
          <LevelledTotals project={id} bids={costed} units={units} />
          <LevellingForm start={await costingStart(id, documents.costing, filled)} bids={bids} />
          <h2>What counts beside the bidders’ prices</h2>
          <StandIns project={id} bids={costed} currency={project.brief.money.currency} />
          <h2>What does not count, and what to watch</h2>
          <NotCounted project={id} bids={costed} />
          <h2>Do the bid’s own figures agree?</h2>
          <PriceNotes project={id} bids={costed} />
        </>
      )}
    </>
  );
}
