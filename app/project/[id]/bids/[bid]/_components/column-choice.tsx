"use client";
import { type ClaimField, claimFieldLabels, claimFields, type PastedLayout, type Rows } from "#lib/claim";
import styles from "./paste-rows.module.css";

const intoNote = "into-note";

/** Lets a person say which pasted column holds what; the preview below follows at once. */
export function ColumnChoice({
  rows,
  layout,
  choose,
}: {
  rows: Rows;
  layout: PastedLayout;
  choose: (layout: PastedLayout) => void;
}) {
  const width = Math.max(...rows.map((row) => row.length));
  const at = Array.from({ length: width }, (_, index) => index);
  const columns = at.map((index) => layout.columns[index] ?? null);
  const take = (index: number, value: string) => {
    const field = claimFields.find((candidate) => candidate === value) ?? null;
    // a field stands in one column only, so the column that had it before is left out
    const next = columns.map((held, other) => (other === index ? field : held === field ? null : held));
    choose({ ...layout, columns: next });
  };
  return (
    <details className={styles.columns}>
      <summary>Say which column holds what</summary>
      <label className={styles.headings}>
        <input
          type="checkbox"
          checked={layout.headingRows === 1}
          onChange={({ target }) => choose({ columns, headingRows: target.checked ? 1 : 0 })}
        />
        The first row holds headings
      </label>
      <ol className={styles.choices}>
        {at.map((index) => (
          <li key={index}>
            <label>
              Column {index + 1}
              <span className={styles.sample}>{sampleOf(rows, index)}</span>
              <select value={columns[index] ?? intoNote} onChange={({ target }) => take(index, target.value)}>
                {claimFields.map((field: ClaimField) => (
                  <option key={field} value={field}>
                    {claimFieldLabels[field]}
                  </option>
                ))}
                <option value={intoNote}>no field; goes into the note</option>
              </select>
            </label>
          </li>
        ))}
      </ol>
    </details>
  );
}

/** The first cells of a column that hold something, to know it by. */
const sampleOf = (rows: Rows, index: number): string =>
  rows
    .map((row) => row[index]?.trim() ?? "")
    .filter((cell) => cell !== "")
    .slice(0, 2)
    .map((cell) => `“${cell.length > 24 ? `${cell.slice(0, 23)}…` : cell}”`)
    .join(", ") || "empty";
