"use client";
import { type RowChoice, rowChoices } from "../_comparison/row-choice";
import styles from "./table-controls.module.css";
import type { BidHead, RowFilter } from "./table-model";

type Controls = Readonly<{
  bids: readonly BidHead[];
  filter: RowFilter;
  choose: (filter: RowFilter) => void;
  pinned: string;
  pin: (bid: string) => void;
  areAllOpen: boolean;
  openAll: (open: boolean) => void;
}>;

const choices = Object.entries(rowChoices) as readonly [RowChoice, string][];

/** What a reader can choose of the table. Without script the whole table stands there and these are left out. */
export function TableControls({ bids, filter, choose, pinned, pin, areAllOpen, openAll }: Controls) {
  const shownBids = filter.shown.filter(Boolean).length;
  return (
    <div className={`${styles.controls} screen-only`}>
      <fieldset>
        <legend>Rows</legend>
        {choices.map(([choice, label]) => (
          <label key={choice}>
            <input
              type="radio"
              name="rows"
              checked={filter.choice === choice}
              onChange={() => choose({ ...filter, choice })}
            />
            {label}
          </label>
        ))}
        <label>
          <input
            type="checkbox"
            checked={filter.hidesEqual}
            onChange={() => choose({ ...filter, hidesEqual: !filter.hidesEqual })}
          />
          Hide rows that are equal
        </label>
      </fieldset>
      <fieldset>
        <legend>Bids</legend>
        {bids.map(({ id, letter }, index) => (
          <label key={id}>
            <input
              type="checkbox"
              checked={filter.shown[index] ?? true}
              disabled={shownBids === 1 && filter.shown[index]}
              onChange={() =>
                choose({ ...filter, shown: filter.shown.map((shown, at) => (at === index ? !shown : shown)) })
              }
            />
            <span className="visually-hidden">Show bid </span>
            {letter}
          </label>
        ))}
        <label>
          Keep in front
          <select value={pinned} onChange={({ target }) => pin(target.value)}>
            <option value="">no bid</option>
            {bids.map(({ id, letter }) => (
              <option key={id} value={id}>
                bid {letter}
              </option>
            ))}
          </select>
        </label>
      </fieldset>
      <button type="button" className="plain" onClick={() => openAll(!areAllOpen)}>
        {areAllOpen ? "Close all groups" : "Open all groups"}
      </button>
    </div>
  );
}
