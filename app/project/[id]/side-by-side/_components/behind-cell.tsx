"use client";
import Link from "next/link";
import { createContext, useContext, useEffect, useState } from "react";
import { WorkingText } from "../../../../_components/working";
import type { Cell, Mark, Statement } from "../_comparison/model";
import { type Part, type Place, placeKey } from "../_comparison/opened-parts";
import styles from "./behind-cell.module.css";

/** Where cells come from with all that lies behind them. A new source stands for new figures or other units. */
export type BehindSource = Readonly<{
  project: string;
  /** Sent along with the page, by row and bid. */
  given: ReadonlyMap<string, Cell>;
  /** Asked for since, so that no cell is asked for twice. */
  asked: Map<string, Promise<Cell>>;
}>;

export const BehindContext = createContext<BehindSource>({ project: "", given: new Map(), asked: new Map() });

async function fetched(project: string, { row, bid }: Place): Promise<Cell> {
  const asked = new URLSearchParams({ row, bid });
  const answer = await fetch(`/project/${project}/side-by-side/behind?${asked}`);
  if (!answer.ok) throw new Error(`answered ${answer.status}`);
  return answer.json();
}

function cellFrom({ project, asked }: BehindSource, place: Place): Promise<Cell> {
  const key = placeKey(place);
  const found = asked.get(key) ?? fetched(project, place);
  asked.set(key, found);
  found.catch(() => asked.delete(key));
  return found;
}

type Outcome = Readonly<{ kind: "waiting" } | { kind: "failed" } | { kind: "here"; cell: Cell }>;

function useCell(source: BehindSource, row: string, bid: string): Outcome {
  const given = source.given.get(placeKey({ row, bid }));
  const [outcome, setOutcome] = useState<Outcome>({ kind: "waiting" });
  useEffect(() => {
    if (given !== undefined) return;
    let isWanted = true;
    cellFrom(source, { row, bid }).then(
      (cell) => isWanted && setOutcome({ kind: "here", cell }),
      () => isWanted && setOutcome({ kind: "failed" }),
    );
    return () => {
      isWanted = false;
    };
  }, [source, given, row, bid]);
  return given === undefined ? outcome : { kind: "here", cell: given };
}

/** What lies behind a part of a cell. It is fetched when somebody opens it: few of some thousand cells are ever opened. */
export function BehindCell({ row, bid, part }: Place & { part: Part }) {
  const source = useContext(BehindContext);
  const outcome = useCell(source, row, bid);
  switch (outcome.kind) {
    case "waiting":
      return <p role="status">Fetching…</p>;
    case "failed":
      return <p role="status">This could not be fetched. Close it and open it again once the server answers.</p>;
    case "here":
      return <CellPart project={source.project} cell={outcome.cell} part={part} />;
  }
}

function CellPart({ project, cell, part }: { project: string; cell: Cell; part: Part }) {
  if (typeof part === "number") {
    const statement = cell.statements[part];
    if (statement === undefined) return null;
    return <Facts address={`/project/${project}/bids/${cell.bid}#${statement.id}`} statement={statement} />;
  }
  switch (part) {
    case "working":
      return cell.working === null ? null : <WorkingText project={project} working={cell.working} />;
    case "why":
      return cell.lines.map((line) => <p key={line}>{line}</p>);
    case "findings":
      return cell.marks.map((mark) => <FindingText key={mark.key} mark={mark} />);
  }
}

function FindingText({ mark: { severity, title, sentence, question, isSettled } }: { mark: Mark }) {
  return (
    <div className={styles.finding}>
      <p className={styles.title}>
        {severity}: {title}
      </p>
      <p>{sentence}</p>
      <p>{isSettled ? "Settled by an answer of the bidder." : `Ask: ${question}`}</p>
    </div>
  );
}

function Facts({ address, statement: { text, unit, facts } }: { address: string; statement: Statement }) {
  return (
    <div className={styles.facts}>
      <dl>
        {facts.map((fact) => (
          <div key={`${fact.label} ${fact.text}`}>
            <dt>{fact.label}</dt>
            <dd>{fact.text}</dd>
          </div>
        ))}
      </dl>
      <p className="screen-only">
        <Link href={address} prefetch={false}>
          where entered
          <span className="visually-hidden">: {`${text}${unit}`}</span>
        </Link>
      </p>
    </div>
  );
}
