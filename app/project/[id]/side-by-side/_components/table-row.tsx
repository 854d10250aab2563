"use client";
import { memo } from "react";
import { wholeRow } from "../_comparison/opened-parts";
import type { ShownRow } from "../_comparison/packed-table";
import { CellContent, type CellSetting } from "./cell-content";
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
  setting: CellSetting;
  /** What is opened in this row, as names parted by spaces. */
  opened: string;
  /** The address at which all that lies behind the row is open. */
  openRow: string;
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
const RowCells = memo(function RowCells({ row, number, bids, columns, pinned, setting, opened, openRow }: Cells) {
  return (
    <>
      <th scope="row">
        {row.unit === "" ? row.label : `${row.label}, ${row.unit}`}
        {row.under === "" ? null : <small>{row.under}</small>}
        <a href={openRow} className={styles.scriptless}>
          open this row
        </a>
      </th>
      {columns.map((column) => {
        const bid = bids[column];
        const cell = row.cells[column];
        if (bid === undefined || cell === undefined) return null;
        return (
          <CellContent
            key={bid.id}
            cell={cell}
            row={row.id}
            bid={bid.id}
            of={`${row.label}, bid ${bid.letter}`}
            at={`${number}.${column}`}
            isPinned={bid.id === pinned}
            opened={openedInCell(opened, `${number}.${column}`)}
            setting={setting}
          />
        );
      })}
    </>
  );
});

/** Only what concerns the cell, so that the others of its row are not drawn again. */
const openedInCell = (opened: string, at: string): string =>
  opened === ""
    ? ""
    : opened
        .split(" ")
        .filter((key) => wholeRow(key) !== null || key.startsWith(`${at}.`))
        .join(" ");
