"use client";
import type { PastedCellProblem } from "#lib/fieldtest";
import { CellProblems, PasteArea, type PasteOutcome } from "../../../../../_components/form/paste-area";
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
  what,
  block,
  ...rest
}: Omit<React.ComponentProps<typeof PasteArea>, "label" | "outcome"> & {
  /** What the rows are called: “rows of drops”. */
  what: string;
  block: BlockRead;
}) {
  return <PasteArea {...rest} label={`Pasted ${what}`} outcome={outcomeOf(block, what)} />;
}

function outcomeOf(block: BlockRead, what: string): PasteOutcome {
  if (block.kind !== "read") return block;
  const rows = block.rows.length;
  return {
    ...{ kind: "read", rows, summary: summary(block) },
    takeOver: rows === 1 ? "Take over this row" : `Take over these ${rows} rows`,
    preview: (
      <Scroller label={`How the pasted ${what} were read`}>
        <Preview block={block} />
      </Scroller>
    ),
  };
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
                <CellProblems
                  messages={problems
                    .filter((problem) => problem.row === firstRow[index] && problem.column === place + 1)
                    .map(({ message }) => message)}
                />
              </td>
            ))}
            <td>{goesTo}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
