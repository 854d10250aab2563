import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { BidLetter } from "../../../_components/bid-letter";
import { Caution } from "../../../_components/caution";
import { PageHead } from "../../../_components/page-head";
import { loadEvaluation } from "../../../_data/load-project";
import { readersUnits } from "../../../_units";
import { pageOf } from "../_contents";
import { comparison } from "./_comparison/comparison";
import type { Cell, Group, Row } from "./_comparison/model";
import { whatStandsOut } from "./_comparison/what-stands-out";
import { CellContent } from "./_components/cell-content";
import { ComparisonTable } from "./_components/comparison-table";
import type { BidHead, Line } from "./_components/table-model";
import styles from "./page.module.css";

export const metadata: Metadata = { title: pageOf("side-by-side").title };

export default async function SideBySidePage({ params }: PageProps<"/project/[id]/side-by-side">) {
  const { id } = await params;
  const loaded = await loadEvaluation(id);
  if (loaded === null) notFound();
  const { project, evaluation } = loaded;
  const head = <PageHead {...pageOf("side-by-side")} />;
  if (evaluation.bids.length === 0) return <NoBids head={head} project={id} />;
  const units = await readersUnits();
  const groups = comparison(project, evaluation, units);
  const bids = evaluation.bids.map(
    ({ id: bid, letter, bidder, system }, index): BidHead => ({
      id: bid,
      letter,
      name: `Bid ${letter}, ${bidder}`,
      head: (
        <>
          <span className="visually-hidden">Bid </span>
          <BidLetter letter={letter} index={index} /> <span className={styles.bidder}>{bidder}</span>
          <span className={styles.system}>{system}</span>
        </>
      ),
    }),
  );
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
      <ComparisonTable lines={groups.map((group) => groupLine(id, group, bids))} bids={bids} />
    </>
  );
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

const groupLine = (project: string, { id, label, rows }: Group, bids: readonly BidHead[]): Line => ({
  id,
  label,
  apart: false,
  cells: [],
  head: null,
  slots: [],
  lines: rows.map((row) => rowLine(project, row, bids)),
});

function rowLine(project: string, row: Row, bids: readonly BidHead[]): Line {
  return {
    id: row.id,
    label: row.label,
    apart: row.apart,
    cells: row.cells.map(gistOf),
    head: (
      <>
        {row.label}
        {row.under === "" ? null : <span className={styles.under}>{row.under}</span>}
      </>
    ),
    slots: row.cells.map((cell, index) => (
      <CellContent key={cell.bid} project={project} of={`${row.label}, bid ${bids[index]?.letter ?? ""}`} cell={cell} />
    )),
    lines: [],
  };
}

/** A status and the titles of findings are copied along, since a figure without them would say too much. */
function gistOf({ text, status, marks, statements }: Cell) {
  const found = [...marks, ...statements.flatMap((statement) => statement.marks)];
  const words = [text, status ?? "", ...found.map(({ title }) => title)].filter((part) => part !== "");
  return {
    text: words.join(" – "),
    isGap: status === "not shown",
    isInQuestion: status === "not comparable" || status === "over-claimed" || found.length > 0,
  };
}
