"use client";
import { useState } from "react";
import { useFieldArray, useFormContext } from "react-hook-form";
import { options } from "../../../../../_components/form/choice-field";
import { freshId } from "../../../../../_components/form/fresh-id";
import { useUndo } from "../../../_components/use-undo";
import { measureChoices, startingCriterion } from "../../../requirements/_components/measure-choices";
import { ClauseEntry } from "./clause-entry";
import { type ClausesValues, emptyClause } from "./clause-values";
import styles from "./clauses.module.css";

/** The clauses in the order in which the text is drawn up; each opens to be worked on. */
export function ClauseList({
  project,
  previews,
  notes,
}: {
  project: string;
  previews: Readonly<Record<string, React.ReactNode>>;
  notes: Readonly<Record<string, readonly string[]>>;
}) {
  const { control, getValues } = useFormContext<ClausesValues>();
  const { fields, append, remove, insert } = useFieldArray({ control, name: "clauses", keyName: "key" });
  const { keep, notice } = useUndo<ClausesValues["clauses"][number]>(insert);
  const [added, setAdded] = useState<string | null>(null);
  const [measure, setMeasure] = useState("");
  const add = () => {
    const id = freshId(
      "clause",
      getValues("clauses").map((clause) => clause.id),
    );
    const { label, reason } = startingCriterion(id, measure);
    append({ ...emptyClause(id, ""), measure, label, reason }, { shouldFocus: false });
    setAdded(id);
    setMeasure("");
  };
  return (
    <>
      {fields.length === 0 ? (
        <p>There are no criteria and no clauses yet. Set criteria under Requirements, or add a clause below.</p>
      ) : null}
      <ol className={styles.clauses}>
        {fields.map(({ key, id, criterion }, index) => (
          <ClauseEntry
            key={key}
            index={index}
            project={project}
            isNew={id === added}
            preview={previews[criterion || id] ?? null}
            notes={notes[criterion || id] ?? []}
            remove={() => {
              const value = structuredClone(getValues(`clauses.${index}`));
              remove(index);
              keep({ index, value, words: `“${value.label || "the clause"}”` });
            }}
          />
        ))}
      </ol>
      {notice}
      <div className={`${styles.add} screen-only`}>
        <label htmlFor="next-measure">A clause that no criterion uses, about</label>
        <select id="next-measure" value={measure} onChange={({ target }) => setMeasure(target.value)}>
          <option value="">something asked in words</option>
          {options(measureChoices)}
        </select>
        <button type="button" onClick={add}>
          Add a clause
        </button>
      </div>
    </>
  );
}
