"use client";
import { useChangedBy } from "./changed-marks";
import styles from "./field.module.css";

/** What every field has besides its control. `labelHidden` is for cells of a table whose head already shows the label. */
export type FieldWords = Readonly<{
  name: string;
  label: string;
  hint?: string;
  className?: string | undefined;
  labelHidden?: true;
}>;

/** The attributes that tie a control to its hint and its sentence of trouble. */
export function fieldAttributes(id: string, { hint }: FieldWords, problem: string | null) {
  const describedBy = [hint === undefined ? "" : `${id}-hint`, problem === null ? "" : `${id}-problem`]
    .join(" ")
    .trim();
  return { id, "aria-invalid": problem !== null, ...(describedBy === "" ? {} : { "aria-describedby": describedBy }) };
}

/** Label, hint, control and sentence of trouble. The field's path is its anchor, so that “where entered” finds it. */
export function FieldFrame({
  id,
  words: { name, label, hint, className, labelHidden },
  problem,
  children,
}: {
  id: string;
  words: FieldWords;
  problem: string | null;
  children: React.ReactNode;
}) {
  const changedBy = useChangedBy(name);
  return (
    <div id={name} className={`${styles.field} ${className ?? ""}`} data-problem={problem === null ? undefined : ""}>
      <label htmlFor={id} className={labelHidden ? "visually-hidden" : undefined}>
        {label}
      </label>
      {hint === undefined ? null : (
        <span id={`${id}-hint`} className={styles.hint}>
          {hint}
        </span>
      )}
      {changedBy === null ? null : (
        <span className={`${styles.changed} screen-only`}>Changed by {changedBy} just now</span>
      )}
      {children}
      {problem === null ? null : (
        <span id={`${id}-problem`} className={styles.problem}>
          {problem}
        </span>
      )}
    </div>
  );
}
