"use client";
import { useEffect, useId, useRef } from "react";
import type { PastedCellProblem } from "#lib/fieldtest";
import { Scroller } from "../../../../../_components/scroller";
import styles from "./paste-block.module.css";

/** A cell as pasted and how it was read; empty where it is words or does not read. */
export type ReadCell = Readonly<{ text: string; reading: string }>;

/** A block as it was read, before it goes into the form. Columns are those of the block; rows count from 1. */
export type BlockRead = Readonly<
  | { kind: "nothing" }
  | { kind: "not-read"; message: string }
  | {
      kind: "read";
      columns: readonly string[];
      rows: readonly Readonly<{ cells: readonly ReadCell[]; goesTo: string }>[];
      problems: readonly PastedCellProblem[];
      /** Row in the block of the first row here: 2 after a heading. */
      firstRow: readonly number[];
    }
>;

/** Shows a pasted block cell by cell as it was read, and takes it over when that is asked. Nothing in it is dropped. */
export function PasteBlock({
  title,
  explain,
  what,
  pasted,
  setPasted,
  block,
  take,
  children,
}: {
  title: string;
  explain: string;
  /** What the rows are called: “rows of drops”. */
  what: string;
  pasted: string;
  setPasted: (text: string) => void;
  block: BlockRead;
  take: () => void;
  /** Choices that the reading depends on. */
  children?: React.ReactNode;
}) {
  const id = useId();
  const area = useRef<HTMLTextAreaElement>(null);
  // a block that was pasted into the table shows up here, out of sight of where it was pasted
  useEffect(() => {
    if (pasted !== "" && document.activeElement !== area.current) area.current?.focus();
  }, [pasted]);
  return (
    <details className={`${styles.paste} screen-only`} open={pasted !== "" || undefined}>
      <summary>{title}</summary>
      <p>{explain}</p>
      {children}
      <label htmlFor={id}>Pasted {what}</label>
      <textarea
        id={id}
        ref={area}
        rows={4}
        value={pasted}
        spellCheck={false}
        onChange={({ target }) => setPasted(target.value)}
      />
      {block.kind === "not-read" ? (
        <p role="alert" className={styles.trouble}>
          {block.message}
        </p>
      ) : null}
      {block.kind === "read" ? (
        <>
          <p role="status">{summary(block)}</p>
          <Scroller label={`How the pasted ${what} were read`}>
            <Preview block={block} />
          </Scroller>
          <p className="row">
            <button
              type="button"
              className="primary"
              aria-disabled={block.rows.length === 0}
              onClick={() => {
                if (block.rows.length === 0) return;
                take();
                setPasted("");
              }}
            >
              {block.rows.length === 1 ? "Take over this row" : `Take over these ${block.rows.length} rows`}
            </button>
            <button type="button" onClick={() => setPasted("")}>
              Leave them out
            </button>
          </p>
        </>
      ) : null}
    </details>
  );
}

type ReadBlock = Extract<BlockRead, { kind: "read" }>;

function summary({ rows, problems }: ReadBlock): string {
  const cells = problems.length === 1 ? "1 cell does" : `${problems.length} cells do`;
  return `${rows.length === 1 ? "1 row was" : `${rows.length} rows were`} found. ${
    problems.length === 0
      ? "All of it reads."
      : `${cells} not read yet; the text is kept and can be put right in the table, and until then the campaign stays a draft.`
  }`;
}

function Preview({ block: { columns, rows, problems, firstRow } }: { block: ReadBlock }) {
  return (
    <table className={styles.preview}>
      <caption>How the rows were read</caption>
      <thead>
        <tr>
          <th scope="col">Row</th>
          {columns.map((column) => (
            <th key={column} scope="col">
              {column}
            </th>
          ))}
          <th scope="col">Goes to</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ cells, goesTo }, index) => (
          <tr key={firstRow[index] ?? index}>
            <th scope="row">{firstRow[index] ?? index + 1}</th>
            {columns.map((column, place) => (
              <td key={column}>
                {cells[place]?.text}
                {cells[place]?.reading ? <span className={styles.reading}>{cells[place].reading}</span> : null}
                {problems
                  .filter((problem) => problem.row === firstRow[index] && problem.column === place + 1)
                  .map(({ message }) => (
                    <span key={message} className={styles.trouble}>
                      {message}
                    </span>
                  ))}
              </td>
            ))}
            <td>{goesTo}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
