"use client";
import { memo } from "react";
import type { ShownRow } from "../_comparison/packed-table";
import { CellContent } from "./cell-content";
import styles from "./comparison-table.module.css";

export type BidHead = Readonly<{ id: string; letter: string; bidder: string; system: string }>;

type Cells = Readonly<{
  row: ShownRow;
  /** The place of the row among all rows. */
  number: number;
  bids: readonly BidHead[];
  /** Places of the bids, from the first column to the last. */
  columns: readonly number[];
  pinned: string;
  evidence: readonly string[];
  /** What is opened in this row, as names of buttons parted by spaces. */
  opened: string;
}>;

type TableRowProps = Cells & Readonly<{ state: "shown" | "closed" | "left-out" }>;

/** A row stays in the document when it is not shown, so that a print shows closed groups too. */
export const TableRow = memo(function TableRow({ state, ...cells }: TableRowProps) {
  const classes = [cells.row.apart ? styles.apart : "", state === "closed" ? styles.closed : ""].filter(Boolean);
  return (
    <tr className={classes.length === 0 ? undefined : classes.join(" ")} hidden={state === "left-out"}>
      <RowCells {...cells} />
    </tr>
  );
});

/** Apart from the row, so that showing and leaving out a row does not draw its cells again. */
const RowCells = memo(function RowCells({ row, number, bids, columns, pinned, evidence, opened }: Cells) {
  return (
    <>
      <th scope="row">
        {row.unit === "" ? row.label : `${row.label}, ${row.unit}`}
        {row.under === "" ? null : <small>{row.under}</small>}
      </th>
      {columns.map((column) => {
        const bid = bids[column];
        const cell = row.cells[column];
        if (bid === undefined || cell === undefined) return null;
        const at = `${number}.${column}`;
        const place = { row: row.id, bid: bid.id, of: `${row.label}, bid ${bid.letter}`, at, evidence };
        return (
          <CellContent
            key={bid.id}
            place={place}
            cell={cell}
            isPinned={bid.id === pinned}
            opened={opened
              .split(" ")
              .filter((key) => key.startsWith(`${at}.`))
              .join(" ")}
          />
        );
      })}
    </>
  );
});
