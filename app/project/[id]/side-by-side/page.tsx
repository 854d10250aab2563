import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { evidenceLevels } from "#lib/claim";
import { Caution } from "../../../_components/caution";
import { PageHead } from "../../../_components/page-head";
import { loadEvaluation } from "../../../_data/load-project";
import { readersUnits } from "../../../_units";
import { pageOf } from "../_contents";
import { comparison } from "./_comparison/comparison";
import type { Cell, Group } from "./_comparison/model";
import { placeKey, wholeRow } from "./_comparison/opened-parts";
import { ordersOf } from "./_comparison/orders-of-bids";
import { packedTable } from "./_comparison/packed-table";
import { fields } from "./_comparison/table-choice";
import { whatStandsOut } from "./_comparison/what-stands-out";
import { ComparisonTable } from "./_components/comparison-table";
import styles from "./page.module.css";

export const metadata: Metadata = { title: pageOf("side-by-side").title };

export default async function SideBySidePage({ params, searchParams }: PageProps<"/project/[id]/side-by-side">) {
  const { id } = await params;
  const loaded = await loadEvaluation(id);
  if (loaded === null) notFound();
  const { project, evaluation } = loaded;
  const head = <PageHead {...pageOf("side-by-side")} />;
  if (evaluation.bids.length === 0) return <NoBids head={head} project={id} />;
  const units = await readersUnits();
  const groups = comparison(project, evaluation, units);
  return (
    <>
      {head}
      <section aria-labelledby="stands-out" className={styles.standsOut}>
        <h2 id="stands-out">What stands out</h2>
        <ul>
          {whatStandsOut({ project, evaluation, groups, units }).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </section>
      <h2>All claims and figures</h2>
      {evaluation.cautions.map((caution) => (
        <Caution key={caution}>{caution}</Caution>
      ))}
      <ComparisonTable
        project={id}
        table={packedTable(groups)}
        bids={evaluation.bids.map(({ id: bid, letter, bidder, system }) => ({ id: bid, letter, bidder, system }))}
        orders={ordersOf(evaluation)}
        evidence={evidenceLevels.map(({ label }) => label)}
        given={givenCells(groups, (await searchParams)[fields.open])}
      />
    </>
  );
}

/** The cells of rows that the address opens: without script they have to come with the page. */
function givenCells(groups: readonly Group[], open: string | readonly string[] | undefined) {
  const rows = groups.flatMap((group) => group.rows);
  return [open ?? []].flat().flatMap((key) => {
    const row = rows[wholeRow(key) ?? -1];
    if (row === undefined) return [];
    return row.cells.map((cell): readonly [string, Cell] => [placeKey({ row: row.id, bid: cell.bid }), cell]);
  });
}

function NoBids({ head, project }: { head: React.ReactNode; project: string }) {
  return (
    <>
      {head}
      <p>
        There is nothing to set side by side yet. <Link href={`/project/${project}/bids`}>Enter the first bid</Link>.
        Its claims and the figures worked out from them will stand here, one column for each bid.
      </p>
    </>
  );
}
