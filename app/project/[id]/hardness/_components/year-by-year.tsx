"use client";
import { useId, useState } from "react";
import styles from "./year-by-year.module.css";

/** What one year holds for each bid, in sentences; a slider goes through the years. */
export function YearByYear({ start, years }: { start: number; years: readonly (readonly string[])[] }) {
  const [year, setYear] = useState(start);
  const id = useId();
  const words = year === 0 ? "as new" : `year ${year}`;
  return (
    <div className={styles.years}>
      <p className={`${styles.choice} screen-only`}>
        <label htmlFor={id}>Year to look at</label>
        <input
          id={id}
          type="range"
          min={0}
          max={years.length - 1}
          step={1}
          value={year}
          aria-valuetext={words}
          onChange={({ target }) => setYear(Number(target.value))}
        />
        <output htmlFor={id}>{words}</output>
      </p>
      <ul aria-live="polite">
        {(years[year] ?? []).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </div>
  );
}
