"use client";
import { useRef } from "react";
import { useFormContext, useWatch } from "react-hook-form";
import { scopeStandings } from "#lib/cost";
import { BidLetter } from "../../../../_components/bid-letter";
import { Scroller } from "../../../../_components/scroller";
import type { LevelledValues } from "./levelled-values";
import styles from "./levelling.module.css";
import { matrixMove } from "./matrix-keys";
import { ScopeCell } from "./scope-cell";

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
}: {
  bids: readonly LevelledBid[];
  /** The cell whose details stand below; null where none is open. */
  opened: number | null;
  open: (index: number) => void;
}) {
  const { control } = useFormContext<LevelledValues>();
  const table = useRef<HTMLTableElement>(null);
  const items = useWatch({ control, name: "checklist" });
  const onKeyDown = (event: React.KeyboardEvent) => {
    const cell = event.target instanceof HTMLSelectElement ? event.target.closest("td") : null;
    if (cell === null) return;
    const place = { row: Number(cell.dataset.row), column: Number(cell.dataset.column) };
    if (event.key === "Enter") {
      event.preventDefault();
      open(place.row * bids.length + place.column);
      return;
    }
    const to = matrixMove(event, place, { rows: items.length, columns: bids.length });
    if (event.key.startsWith("Arrow") && !event.altKey) event.preventDefault(); // a slip of the key changes no standing
    if (to === null) return;
    table.current?.querySelector<HTMLElement>(`[data-row="${to.row}"][data-column="${to.column}"] select`)?.focus();
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
            <tr key={item.id} id={`item-${item.id}`}>
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
