"use client";
import { useFormContext, useWatch } from "react-hook-form";
import type { DimensionName } from "#lib/quantity";
import { problemAt } from "../../../../_components/form/problem-at";
import { TextField } from "../../../../_components/form/text-field";
import styles from "./requirements.module.css";

type ScoredText = Readonly<{ at: string; value: string }>;

/** A list of figures in rising order, each with the value it has. */
export function ScoredFigures({ name, what, dimension }: { name: string; what: string; dimension: DimensionName }) {
  const { getValues, setValue, formState } = useFormContext();
  const entries: readonly ScoredText[] = useWatch({ name }) ?? [];
  const problem = problemAt(formState.errors, name);
  const change = (edit: (entries: readonly ScoredText[]) => readonly ScoredText[]) =>
    setValue(name, edit(getValues(name)));
  return (
    <fieldset data-problem={problem === null ? undefined : ""}>
      <legend className="visually-hidden">{what}s, in rising order</legend>
      {problem === null ? null : <p className={styles.problem}>{problem}</p>}
      {entries.map((_, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: entries have no name but their place
        <div key={index} className={styles.scored}>
          <TextField name={`${name}.${index}.at`} label={`${what} ${index + 1}: figure`} dimension={dimension} />
          <TextField name={`${name}.${index}.value`} label="scores, from 0 to 1" />
          <button
            type="button"
            className="plain"
            onClick={() => change((now) => now.filter((_entry, place) => place !== index))}
          >
            Remove
            <span className="visually-hidden">
              {" "}
              {what.toLowerCase()} {index + 1}
            </span>
          </button>
        </div>
      ))}
      <button type="button" onClick={() => change((now) => [...now, { at: "", value: "" }])}>
        Add a {what.toLowerCase()}
      </button>
    </fieldset>
  );
}
