"use client";
import { useFormContext, useWatch } from "react-hook-form";
import type { DimensionName } from "#lib/quantity";
import styles from "./field.module.css";
import type { FieldWords } from "./field-frame";
import { pastedLines, withLines } from "./pasted-lines";
import { problemAt } from "./problem-at";
import { TextField } from "./text-field";

/** A numbered list of one-line texts. Several lines pasted into one of them become entries of their own. */
export function TextListField({
  entry,
  dimension,
  name,
  label,
  hint,
}: Pick<FieldWords, "name" | "label" | "hint"> & {
  /** The label of the n-th entry, counted from 0. */
  entry: (index: number) => string;
  dimension?: DimensionName;
}) {
  const { getValues, setValue, formState } = useFormContext();
  const texts: readonly string[] = useWatch({ name }) ?? [];
  const problem = problemAt(formState.errors, name);
  const change = (edit: (texts: readonly string[]) => readonly string[]) => setValue(name, edit(getValues(name) ?? []));
  const paste = (event: React.ClipboardEvent, index: number) => {
    const lines = pastedLines(event.clipboardData.getData("text"));
    if (lines.length < 2) return;
    event.preventDefault();
    change((now) => withLines(now, index, lines));
  };
  return (
    <fieldset id={name} data-problem={problem === null ? undefined : ""}>
      <legend>{label}</legend>
      {hint === undefined ? null : <p className={styles.hint}>{hint}</p>}
      {problem === null ? null : <p className={styles.problem}>{problem}</p>}
      <ol className={styles.texts}>
        {texts.map((_, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: entries have no name but their place
          <li key={index} onPaste={(event) => paste(event, index)}>
            <TextField name={`${name}.${index}`} label={entry(index)} {...(dimension ? { dimension } : {})} />
            <button
              type="button"
              className="plain"
              onClick={() => change((now) => now.filter((_text, place) => place !== index))}
            >
              Remove<span className="visually-hidden"> {entry(index)}</span>
            </button>
          </li>
        ))}
      </ol>
      <button type="button" onClick={() => change((now) => [...now, ""])}>
        Add {entry(texts.length).replace(/^[A-Z]/, (letter) => letter.toLowerCase())}
      </button>
    </fieldset>
  );
}
