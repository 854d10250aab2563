"use client";
import type { TraceFormat } from "#lib/trace";
import styles from "../../_components/ask-form.module.css";
import type { TraceChoice } from "../../_tests/trace-choice";

const separators: Readonly<Record<TraceFormat["separator"], string>> = {
  tab: "tabs",
  semicolon: "semicolons",
  comma: "commas",
  space: "spaces",
};

/** How the file was understood, to be confirmed or put right. */
export function ColumnFields({
  format,
  choice,
  choose,
}: {
  format: TraceFormat;
  choice: TraceChoice;
  choose: (choice: TraceChoice) => void;
}) {
  const { columns, headings, separator, decimal, firstDataLine } = format;
  const numbers = Array.from({ length: columns }, (_, index) => index + 1);
  const columnOptions = numbers.map((number) => (
    <option key={number} value={number}>
      {number}
      {headings[number - 1] ? `: ${headings[number - 1]}` : ""}
    </option>
  ));
  return (
    <fieldset>
      <legend>Columns</legend>
      <p className="soft">
        {columns === 1 ? "One column" : `${columns} columns between ${separators[separator]}`}, “{decimal}” before
        decimals, numbers from line {firstDataLine} on.
      </p>
      <div className={styles.form}>
        <div className={styles.field}>
          <label htmlFor="time-kind">Time</label>
          <select
            id="time-kind"
            value={choice.time}
            onChange={({ target }) => choose({ ...choice, time: target.value === "column" ? "column" : "sample-rate" })}
          >
            <option value="column">Stands in a column</option>
            <option value="sample-rate">By samples a second</option>
          </select>
        </div>
        {choice.time === "column" ? (
          <>
            <div className={styles.field}>
              <label htmlFor="time-column">Column of the time</label>
              <select
                id="time-column"
                value={choice.timeColumn}
                onChange={({ target }) => choose({ ...choice, timeColumn: Number(target.value) })}
              >
                {columnOptions}
              </select>
            </div>
            <div className={styles.field}>
              <label htmlFor="time-unit">Unit of the time</label>
              <select
                id="time-unit"
                value={choice.timeUnit}
                onChange={({ target }) => choose({ ...choice, timeUnit: target.value as TraceChoice["timeUnit"] })}
              >
                <option value="">Choose the unit</option>
                <option value="s">s</option>
                <option value="ms">ms</option>
                <option value="µs">µs</option>
              </select>
            </div>
          </>
        ) : (
          <div className={styles.field}>
            <label htmlFor="sample-rate">Samples a second</label>
            <input
              id="sample-rate"
              inputMode="decimal"
              autoComplete="off"
              value={choice.rate}
              onChange={({ target }) => choose({ ...choice, rate: target.value })}
            />
          </div>
        )}
        <div className={styles.field}>
          <label htmlFor="acceleration-column">Column of the acceleration</label>
          <select
            id="acceleration-column"
            value={choice.accelerationColumn}
            onChange={({ target }) => choose({ ...choice, accelerationColumn: Number(target.value) })}
          >
            {columnOptions}
          </select>
        </div>
        <div className={styles.field}>
          <label htmlFor="acceleration-unit">Unit of the acceleration</label>
          <select
            id="acceleration-unit"
            value={choice.accelerationUnit}
            onChange={({ target }) =>
              choose({ ...choice, accelerationUnit: target.value as TraceChoice["accelerationUnit"] })
            }
          >
            <option value="">Choose the unit</option>
            <option value="g">g</option>
            <option value="m/s²">m/s²</option>
          </select>
        </div>
        <div className={styles.field}>
          <label htmlFor="sign">Direction</label>
          <select
            id="sign"
            value={choice.sign}
            onChange={({ target }) =>
              choose({ ...choice, sign: target.value === "turned-over" ? "turned-over" : "as-recorded" })
            }
          >
            <option value="as-recorded">The impact is positive</option>
            <option value="turned-over">The impact is negative</option>
          </select>
        </div>
      </div>
    </fieldset>
  );
}
