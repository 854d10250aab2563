"use client";
import { type BidOrders, bidOrders } from "../_comparison/bid-order";
import { type RowChoice, rowChoices } from "../_comparison/row-choice";
import { fields, orderFrom, orderText, type TableChoice } from "../_comparison/table-choice";
import styles from "./table-controls.module.css";
import type { BidHead } from "./table-row";

type Controls = Readonly<{
  bids: readonly BidHead[];
  orders: BidOrders;
  choice: TableChoice;
  choose: (choice: TableChoice) => void;
  areAllOpen: boolean;
  openAll: (open: boolean) => void;
}>;

const choices = Object.entries(rowChoices) as readonly [RowChoice, string][];

/** What a reader can choose of the table. They are fields of its form, so that without script the server can answer. */
export function TableControls({ bids, orders, choice, choose, areAllOpen, openAll }: Controls) {
  const { shown } = choice;
  const toggle = (bid: string) =>
    orders.entered.filter((id) => (id === bid ? !shown.includes(id) : shown.includes(id)));
  return (
    <div className={`${styles.controls} screen-only`}>
      <fieldset>
        <legend>Rows</legend>
        {choices.map(([rows, label]) => (
          <label key={rows}>
            <input
              type="radio"
              name={fields.rows}
              value={rows}
              checked={choice.rows === rows}
              onChange={() => choose({ ...choice, rows })}
            />
            {label}
          </label>
        ))}
        <label>
          <input
            type="checkbox"
            name={fields.equal}
            value="hidden"
            checked={choice.hidesEqual}
            onChange={() => choose({ ...choice, hidesEqual: !choice.hidesEqual })}
          />
          Hide rows that are equal
        </label>
      </fieldset>
      <fieldset>
        <legend>Bids</legend>
        {bids.map(({ id, letter }) => (
          <label key={id}>
            <input
              type="checkbox"
              name={fields.bid}
              value={id}
              checked={shown.includes(id)}
              aria-disabled={(shown.length === 1 && shown.includes(id)) || undefined}
              onChange={() => {
                if (shown.length > 1 || !shown.includes(id)) choose({ ...choice, shown: toggle(id) });
              }}
            />
            <span className="visually-hidden">Show bid </span>
            {letter}
          </label>
        ))}
      </fieldset>
      <label>
        Order
        <select
          name={fields.order}
          value={orderText(choice.order)}
          onChange={({ target }) => choose({ ...choice, order: orderFrom(target.value, orders) })}
        >
          {Object.entries(bidOrders).map(([order, label]) => (
            <option key={order} value={order}>
              {label}
            </option>
          ))}
          {typeof choice.order === "string" ? null : <option value={orderText(choice.order)}>as moved by hand</option>}
        </select>
      </label>
      <label>
        Keep in front
        <select
          name={fields.pin}
          value={choice.pinned}
          onChange={({ target }) => choose({ ...choice, pinned: target.value })}
        >
          <option value="">no bid</option>
          {bids.map(({ id, letter }) => (
            <option key={id} value={id}>
              bid {letter}
            </option>
          ))}
        </select>
      </label>
      <button type="submit" className={styles.scriptless}>
        Show
      </button>
      <button type="button" className={`plain ${styles.scripted}`} onClick={() => openAll(!areAllOpen)}>
        {areAllOpen ? "Close all groups" : "Open all groups"}
      </button>
    </div>
  );
}
