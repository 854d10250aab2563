"use client";
import { useFormContext, useWatch } from "react-hook-form";
import { freshId } from "../../../../_components/form/fresh-id";
import { LongTextField } from "../../../../_components/form/long-text-field";
import { problemAt } from "../../../../_components/form/problem-at";
import { TextField } from "../../../../_components/form/text-field";
import styles from "./requirements.module.css";

type LevelText = Readonly<{ id: string; label: string; description: string; value: string }>;

/** The levels that evaluators choose from, least worth first, each with what has to be so for it. */
export function RatingLevels({ name }: { name: string }) {
  const { getValues, setValue, formState } = useFormContext();
  const levels: readonly LevelText[] = useWatch({ name }) ?? [];
  const problem = problemAt(formState.errors, name);
  const change = (edit: (levels: readonly LevelText[]) => readonly LevelText[]) =>
    setValue(name, edit(getValues(name)));
  const add = () =>
    change((now) => [
      ...now,
      {
        id: freshId(
          "level",
          now.map(({ id }) => id),
        ),
        ...{ label: "", description: "", value: "" },
      },
    ]);
  return (
    <fieldset data-problem={problem === null ? undefined : ""}>
      <legend className="visually-hidden">Levels, least worth first</legend>
      {problem === null ? null : <p className={styles.problem}>{problem}</p>}
      {levels.map(({ id, label }, index) => (
        <div key={id} className={styles.level}>
          <TextField name={`${name}.${index}.label`} label={`Level ${index + 1}`} />
          <TextField name={`${name}.${index}.value`} label="scores, from 0 to 1" />
          <LongTextField
            name={`${name}.${index}.description`}
            label="What has to be so"
            rows={2}
            className={styles.wide}
          />
          <button
            type="button"
            className="plain"
            onClick={() => change((now) => now.filter((_entry, place) => place !== index))}
          >
            Remove
            <span className="visually-hidden">
              {" "}
              level {index + 1}, {label}
            </span>
          </button>
        </div>
      ))}
      <button type="button" onClick={add}>
        Add a level
      </button>
    </fieldset>
  );
}
