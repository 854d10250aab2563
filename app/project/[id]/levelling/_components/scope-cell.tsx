"use client";
import { useFormContext, useWatch } from "react-hook-form";
import { scopeStandings } from "#lib/cost";
import { problemAt } from "../../../../_components/form/problem-at";
import { isOpen, lacksPrice, plugInWords } from "./entry-words";
import type { LevelledValues } from "./levelled-values";
import styles from "./levelling.module.css";

const standings = Object.entries(scopeStandings);

/** One item in one bid: its standing, what stands in for its price, and the way to its details. */
export function ScopeCell({
  index,
  of,
  isOpened,
  open,
}: {
  index: number;
  of: string;
  isOpened: boolean;
  open: () => void;
}) {
  const { control, register, formState } = useFormContext<LevelledValues>();
  const name = `levelling.${index}` as const;
  const entry = useWatch({ control, name });
  const problem = problemAt(formState.errors, name);
  const lacks = lacksPrice(entry);
  return (
    <div className={styles.cell} data-standing={entry.standing}>
      <select aria-label={of} {...register(`${name}.standing`)}>
        {standings.map(([value, { label }]) => (
          <option key={value} value={value}>
            {label}
          </option>
        ))}
      </select>
      <span className={styles.state}>
        {lacks ? <span className={isOpen(entry) ? styles.open : styles.plug}>{plugInWords(entry)}</span> : null}
        <button type="button" className="plain" aria-expanded={isOpened} onClick={open}>
          Details<span className="visually-hidden"> of {of}</span>
        </button>
      </span>
      {problem === null ? null : <span className={styles.open}>{problem}</span>}
    </div>
  );
}
