"use client";
import { useState } from "react";
import { useFieldArray, useFormContext } from "react-hook-form";
import { LongTextField } from "../../../../../_components/form/long-text-field";
import { RemovedNotice } from "../../../../../_components/form/removed-notice";
import { TextField } from "../../../../../_components/form/text-field";
import type { WordsValues } from "./filled-words";
import styles from "./words.module.css";

/** Views of people who decide with the others but do not agree. */
export function DissentFields() {
  const { control, getValues } = useFormContext<WordsValues>();
  const { fields, append, remove, insert } = useFieldArray({ control, name: "dissents" });
  const [removed, setRemoved] = useState<{ index: number; value: WordsValues["dissents"][number] } | null>(null);
  return (
    <section aria-labelledby="dissents" className={styles.part}>
      <h2 id="dissents">Views that differ</h2>
      <p>Somebody who does not agree can say so here. The board reads it under their name, as they wrote it.</p>
      <ol className={styles.dissents}>
        {fields.map(({ id }, index) => (
          <li key={id}>
            <TextField name={`dissents.${index}.name`} label={`Name of person ${index + 1}`} />
            <LongTextField name={`dissents.${index}.words`} label={`View of person ${index + 1}`} />
            <button
              type="button"
              className="plain"
              onClick={() => {
                setRemoved({ index, value: structuredClone(getValues(`dissents.${index}`)) });
                remove(index);
              }}
            >
              Remove<span className="visually-hidden"> the view of person {index + 1}</span>
            </button>
          </li>
        ))}
      </ol>
      {removed === null ? null : (
        <RemovedNotice
          what={removed.value.name === "" ? "The view" : `The view of ${removed.value.name}`}
          undo={() => {
            insert(removed.index, removed.value);
            setRemoved(null);
          }}
        />
      )}
      <button type="button" onClick={() => append({ name: "", words: "" })}>
        Add a view
      </button>
    </section>
  );
}
