"use client";
import { useId } from "react";
import { useFormContext } from "react-hook-form";
import styles from "./check-field.module.css";
import type { Choice } from "./choice-field";
import type { FieldWords } from "./field-frame";
import { problemAt } from "./problem-at";

/** Something that is so or is not. */
export function CheckField({ name, label, hint, className }: FieldWords) {
  const { register } = useFormContext();
  const id = useId();
  return (
    <p id={name} className={`${styles.check} ${className ?? ""}`}>
      <label>
        <input
          type="checkbox"
          {...register(name)}
          {...(hint === undefined ? {} : { "aria-describedby": `${id}-hint` })}
        />{" "}
        {label}
      </label>
      {hint === undefined ? null : (
        <span id={`${id}-hint`} className={styles.hint}>
          {hint}
        </span>
      )}
    </p>
  );
}

/** Any of a few named things; the field holds the values of those that are ticked. */
export function ChecksField({
  name,
  label,
  choices,
}: Pick<FieldWords, "name" | "label"> & { choices: readonly Choice[] }) {
  const { register, formState } = useFormContext();
  const problem = problemAt(formState.errors, name);
  return (
    <fieldset id={name} data-problem={problem === null ? undefined : ""}>
      <legend>{label}</legend>
      {problem === null ? null : <p className={styles.problem}>{problem}</p>}
      <div className={styles.checks}>
        {choices.map(({ value, label: words }) => (
          <label key={value}>
            <input type="checkbox" value={value} {...register(name)} /> {words}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
