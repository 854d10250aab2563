"use client";
import { useRef } from "react";
import { TextField } from "../../../../../_components/form/text-field";
import type { EntryColumn } from "./entry-columns";
import { entryMove } from "./entry-keys";
import styles from "./entry-table.module.css";

/** Measurements one a row, made for the keyboard: arrows and Enter move in a column, a pasted block is looked through first. */
export function EntryTable({
  list,
  caption,
  row: rowWord,
  columns,
  rows,
  addBelow,
  remove,
  paste,
}: {
  /** Path of the list in the form. */
  list: string;
  caption: string;
  /** What one row is called: “Location”. */
  row: string;
  columns: readonly EntryColumn[];
  rows: readonly Readonly<{ key: string; id: string }>[];
  /** Adds a row below the given one and puts the cursor into a column of it. */
  addBelow: (row: number, column: string) => void;
  remove: (row: number) => void;
  paste: (block: string) => void;
}) {
  const table = useRef<HTMLTableElement>(null);
  const onKeyDown = (event: React.KeyboardEvent) => {
    const cell = event.target;
    if (!(cell instanceof HTMLInputElement)) return;
    const place = cell.closest("td, th");
    const row = Number(cell.closest("tr")?.dataset.row);
    const column = place instanceof HTMLElement ? place.dataset.column : undefined;
    if (column === undefined || Number.isNaN(row)) return;
    const move = entryMove(event, { row, rows: rows.length });
    const choosesUnit = event.key.startsWith("Arrow") && (cell.list?.options.length ?? 0) > 0;
    if (move === null || choosesUnit) return;
    event.preventDefault();
    if (move.kind === "add-below") return addBelow(move.row, columns[0]?.field ?? "");
    const next = table.current?.querySelector<HTMLInputElement>(
      `tr[data-row="${move.row}"] [data-column="${column}"] input`,
    );
    next?.focus();
    next?.select();
  };
  const onPaste = (event: React.ClipboardEvent) => {
    const text = event.clipboardData.getData("text/plain");
    if (!/[\t\n]/.test(text.trim())) return;
    event.preventDefault();
    paste(text);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: keys bubble here from the cells, which are controls
    <div className={styles.entries} onKeyDown={onKeyDown} onPaste={onPaste}>
      <table ref={table} className={styles.table}>
        <caption className="visually-hidden">{caption}</caption>
        <thead>
          <tr>
            <th scope="col" className={styles.count}>
              No.
            </th>
            {columns.map(({ field, label, width }) => (
              <th key={field} scope="col" className={styles[width]}>
                {label}
              </th>
            ))}
            <th scope="col">
              <span className="visually-hidden">Removal</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, id }, index) => (
            <tr key={key} id={id} data-row={index}>
              <th scope="row" className={styles.count}>
                {index + 1}
              </th>
              {columns.map(({ field, label, width, dimension }) => (
                <td key={field} data-column={field} className={styles[width]}>
                  <TextField
                    name={`${list}.${index}.${field}`}
                    label={`${label}, ${rowWord.toLowerCase()} ${index + 1}`}
                    {...(dimension === undefined ? {} : { dimension })}
                  />
                </td>
              ))}
              <td className={styles.commands}>
                <button type="button" className="plain" onClick={() => remove(index)}>
                  Remove
                  <span className="visually-hidden">
                    {" "}
                    {rowWord.toLowerCase()} {index + 1}
                  </span>
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
