"use client";
import { useEffect, useState } from "react";
import { useFormContext, useWatch } from "react-hook-form";
import { freshId } from "../../../../_components/form/fresh-id";
import { TextField } from "../../../../_components/form/text-field";
import { useUndo } from "../../_components/use-undo";
import { type LevelledValues, levelledValues } from "./levelled-values";
import styles from "./levelling.module.css";

type Item = LevelledValues["checklist"][number];

/** The items that every bid is held against. What a bid was found to say of an item stays behind when it is taken out. */
export function ChecklistFields({ bids }: { bids: readonly string[] }) {
  const { control, getValues, setValue, setFocus } = useFormContext<LevelledValues>();
  const items = useWatch({ control, name: "checklist" });
  const [fresh, setFresh] = useState<number | null>(null); // the item that has just come and takes the focus
  useEffect(() => {
    if (fresh === null) return;
    setFocus(`checklist.${fresh}.label`, { shouldSelect: true });
    setFresh(null);
  }, [fresh, setFocus]);
  const put = (checklist: readonly Item[]) => {
    const { levelling } = levelledValues(getValues(), { checklist: [...checklist], bids });
    setValue("levelling", levelling, { shouldDirty: true });
    setValue("checklist", [...checklist], { shouldDirty: true });
  };
  const { keep, notice } = useUndo<Item>((index, item) => {
    put(getValues("checklist").toSpliced(index, 0, item));
    setFresh(index);
  });
  return (
    <details>
      <summary>Rename, add or take out items ({items.length})</summary>
      <p>To start with, it holds what such a project usually needs (common practice, no source).</p>
      <ol className={styles.checklist}>
        {items.map((item, index) => {
          const name = `checklist.${index}.label`; // a field that moves up is another field
          return (
            <li key={`${item.id} ${name}`}>
              <TextField name={name} label={`Item ${index + 1}`} />
              <button
                type="button"
                className="plain"
                onClick={() => {
                  keep({ index, value: item, words: `“${item.label}” from the checklist` });
                  put(items.filter((_, place) => place !== index));
                }}
              >
                Take out<span className="visually-hidden"> {item.label}</span>
              </button>
            </li>
          );
        })}
      </ol>
      {notice}
      <button
        type="button"
        onClick={() => {
          const id = freshId(
            "item",
            items.map((item) => item.id),
          );
          put([...items, { id, label: "New item" }]);
          setFresh(items.length);
        }}
      >
        Add an item
      </button>
    </details>
  );
}
