"use client";
import { useFormContext, useWatch } from "react-hook-form";
import type { DimensionName } from "#lib/quantity";
import { problemAt } from "../../../../_components/form/problem-at";
import { TextField } from "../../../../_components/form/text-field";
import styles from "./requirements.module.css";

type ScoredText = Readonly<{ at: string; value: string }>;

/** A list of figures with the value that each has. */
export function ScoredFiguresField({
  name,
  entry,
  dimension,
}: {
  name: string;
  /** What one line is called. */
  entry: "Step" | "Knot";
  dimension: DimensionName | undefined;
}) {
  const { getValues, setValue, formState } = useFormContext();
  const rows: readonly ScoredText[] = useWatch({ name }) ?? [];
  const problem = problemAt(formState.errors, name);
  const change = (edit: (rows: readonly ScoredText[]) => readonly ScoredText[]) =>
    setValue(name, edit(getValues(name) ?? []));
  return (
    <fieldset id={name} data-problem={problem === null ? undefined : ""}>
      <legend>{entry}s, in rising order of figure</legend>
      {problem === null ? null : <p>{problem}</p>}
      <ol className={styles.rows}>
        {rows.map((_, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: lines have no name but their place
          <li key={index}>
            <TextField
              name={`${name}.${index}.at`}
              label={`${entry} ${index + 1}: figure`}
              {...(dimension ? { dimension } : {})}
            />
            <TextField name={`${name}.${index}.value`} label="Value, 0 to 1" />
            <button
              type="button"
              className="plain"
              onClick={() => change((now) => now.filter((_row, place) => place !== index))}
            >
              Remove
              <span className="visually-hidden">
                {" "}
                {entry.toLowerCase()} {index + 1}
              </span>
            </button>
          </li>
        ))}
      </ol>
      <button type="button" onClick={() => change((now) => [...now, { at: "", value: "" }])}>
        Add a {entry.toLowerCase()}
      </button>
    </fieldset>
  );
}
