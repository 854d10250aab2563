"use client";
import { Fragment, useRef } from "react";
import { useFormContext, useWatch } from "react-hook-form";
import { scopeStandings } from "#lib/cost";
import { BidLetter } from "../../../../_components/bid-letter";
import { Scroller } from "../../../../_components/scroller";
import type { LevelledValues } from "./levelled-values";
import styles from "./levelling.module.css";
import { matrixMove } from "./matrix-keys";
import { ScopeCell } from "./scope-cell";

/** The select of a cell, which holds the focus of the cell. */
export const cellSelect = (inside: ParentNode, place: Readonly<{ row: number; column: number }>) =>
  inside.querySelector<HTMLElement>(`[data-row="${place.row}"][data-column="${place.column}"] select`);

export type LevelledBid = Readonly<{
  id: string;
  letter: string;
  /** The price lines of the bid that may hold an item. */
  lines: readonly Readonly<{ id: string; label: string }>[];
}>;

/** Item by bid: how each bid stands to each item of scope, and what stands in for what it lacks. */
export function ScopeMatrix({
  bids,
  opened,
  open,
  details,
}: {
  bids: readonly LevelledBid[];
  /** The cell whose details stand below its row; null where none is open. */
  opened: number | null;
  open: (index: number) => void;
  details: React.ReactNode;
}) {
  const { control } = useFormContext<LevelledValues>();
  const table = useRef<HTMLTableElement>(null);
  const items = useWatch({ control, name: "checklist" });
  const onKeyDown = (event: React.KeyboardEvent) => {
    const cell = event.target instanceof HTMLSelectElement ? event.target.closest("td") : null;
    if (cell?.dataset.row === undefined) return; // a field of the details
    const place = { row: Number(cell.dataset.row), column: Number(cell.dataset.column) };
    if (event.key === "Enter") {
      event.preventDefault();
      open(place.row * bids.length + place.column);
      return;
    }
    const to = matrixMove(event, place, { rows: items.length, columns: bids.length });
    if (event.key.startsWith("Arrow") && !event.altKey) event.preventDefault(); // a slip of the key changes no standing
    if (to === null) return;
    if (table.current !== null) cellSelect(table.current, to)?.focus();
  };
  return (
    <Scroller label="Scope, table">
      <table ref={table} className={styles.matrix} onKeyDown={onKeyDown}>
        <caption className="visually-hidden">How each bid stands to each item of scope</caption>
        <thead>
          <tr>
            <th scope="col">Item</th>
            {bids.map(({ id, letter }, index) => (
              <th key={id} scope="col">
                Bid <BidLetter letter={letter} index={index} />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {items.map((item, row) => (
            <Fragment key={item.id}>
              <tr id={`item-${item.id}`}>
                <th scope="row">{item.label}</th>
                {bids.map(({ id, letter }, column) => {
                  const index = row * bids.length + column;
                  return (
                    <td key={`${id} ${index}`} data-row={row} data-column={column}>
                      <ScopeCell
                        index={index}
                        of={`${item.label}, bid ${letter}`}
                        isOpened={opened === index}
                        open={() => open(index)}
                      />
                    </td>
                  );
                })}
              </tr>
              {opened === null || Math.floor(opened / bids.length) !== row ? null : (
                <tr>
                  <td colSpan={bids.length + 1} className={styles.under}>
                    {details}
                  </td>
                </tr>
              )}
            </Fragment>
          ))}
        </tbody>
      </table>
      <p className={styles.key}>
        {Object.values(scopeStandings).map(({ label, rule }) => (
          <span key={label}>
            <strong>{label}.</strong> {rule}{" "}
          </span>
        ))}
      </p>
    </Scroller>
  );
}
