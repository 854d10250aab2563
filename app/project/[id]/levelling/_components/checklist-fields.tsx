"use client";
import { useState } from "react";
import { useFormContext, useWatch } from "react-hook-form";
import { freshId } from "../../../../_components/form/fresh-id";
import { RemovedNotice } from "../../../../_components/form/removed-notice";
import { TextField } from "../../../../_components/form/text-field";
import { type LevelledValues, levelledValues } from "./levelled-values";
import styles from "./levelling.module.css";

/** The items that every bid is held against. What a bid was found to say of an item stays behind when it is taken out. */
export function ChecklistFields({ bids }: { bids: readonly string[] }) {
  const { control, getValues, setValue } = useFormContext<LevelledValues>();
  const items = useWatch({ control, name: "checklist" });
  const [removed, setRemoved] = useState<{ index: number; label: string; id: string } | null>(null);
  const put = (checklist: LevelledValues["checklist"]) => {
    const { levelling } = levelledValues(getValues(), { checklist, bids });
    setValue("levelling", levelling, { shouldDirty: true });
    setValue("checklist", checklist, { shouldDirty: true });
  };
  return (
    <>
      <p>
        To start with, it holds what such a project usually needs (common practice, no source). Rename, add and take out
        what you like.
      </p>
      <ol className={styles.checklist}>
        {items.map(({ id, label }, index) => {
          const name = `checklist.${index}.label`; // a field that moves up is another field
          return (
            <li key={`${id} ${name}`}>
              <TextField name={name} label={`Item ${index + 1}`} />
              <button
                type="button"
                className="plain"
                onClick={() => {
                  setRemoved({ index, label, id });
                  put(items.filter((_, place) => place !== index));
                }}
              >
                Take out<span className="visually-hidden"> {label}</span>
              </button>
            </li>
          );
        })}
      </ol>
      {removed === null ? null : (
        <RemovedNotice
          what={`“${removed.label}” from the checklist`}
          undo={() => {
            put(items.toSpliced(removed.index, 0, { id: removed.id, label: removed.label }));
            setRemoved(null);
          }}
        />
      )}
      <button
        type="button"
        onClick={() => {
          const id = freshId(
            "item",
            items.map((item) => item.id),
          );
          put([...items, { id, label: "New item" }]);
        }}
      >
        Add an item
      </button>
    </>
  );
}
