"use client";
import { useFieldArray, useFormContext } from "react-hook-form";
import type { RequirementsText } from "#lib/evaluation";
import { freshId } from "../../../../_components/form/fresh-id";
import { TextField } from "../../../../_components/form/text-field";
import { useUndo } from "../../_components/use-undo";
import styles from "./requirements.module.css";
import type { HeadingText } from "./typed-weights";
import { useTyped } from "./use-typed";

/** A heading that was taken away, with the criteria that stood under it. */
type Removed = Readonly<{ heading: HeadingText; criteria: readonly string[] }>;

/** Headings that criteria are grouped under: each is weighed beside the others, and its criteria among themselves. */
export function HeadingsFields() {
  const { control, getValues, setValue } = useFormContext<RequirementsText>();
  const { fields, append, remove, insert } = useFieldArray({ control, name: "headings", keyName: "key" });
  const { weighing } = useTyped();
  const isDirect = weighing === undefined || weighing.kind === "direct";
  const putUnder = (heading: string, ids: (id: string) => boolean) => {
    for (const [at, { id }] of getValues("criteria").entries())
      if (ids(id)) setValue(`criteria.${at}.heading`, heading, { shouldDirty: true });
  };
  const { keep, notice } = useUndo<Removed>((index, { heading, criteria }) => {
    insert(index, heading, { shouldFocus: false });
    putUnder(heading.id, (id) => criteria.includes(id));
  });
  const removeAt = (index: number) => {
    const heading = structuredClone(getValues("headings")?.[index]);
    if (heading === undefined) return;
    const criteria = getValues("criteria").flatMap((one) => (one.heading === heading.id ? [one.id] : []));
    keep({ index, value: { heading, criteria }, words: heading.label === "" ? "the heading" : `“${heading.label}”` });
    putUnder("", (id) => criteria.includes(id));
    remove(index);
  };
  return (
    <fieldset className={styles.headings}>
      <legend>Headings</legend>
      <p className={styles.note}>
        With headings, weights are given in two steps: first what each heading is worth beside the others, then what
        each criterion is worth under its own. Without any, all criteria stand beside each other.
      </p>
      {fields.map(({ key }, index) => (
        <div key={key} className={styles.headingRow}>
          <TextField name={`headings.${index}.label`} label={`Heading ${index + 1}`} />
          {isDirect ? <TextField name={`headings.${index}.points`} label={`Points of heading ${index + 1}`} /> : null}
          <button type="button" className="plain" onClick={() => removeAt(index)}>
            Remove<span className="visually-hidden"> heading {index + 1}</span>
          </button>
        </div>
      ))}
      {notice}
      <button
        type="button"
        onClick={() => {
          const taken = (getValues("headings") ?? []).map(({ id }) => id);
          append({ id: freshId("heading", taken), label: "", points: "10" });
        }}
      >
        Add a heading
      </button>
    </fieldset>
  );
}
