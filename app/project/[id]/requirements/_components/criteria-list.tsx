"use client";
import { useEffect, useRef, useState } from "react";
import { useFieldArray, useFormContext } from "react-hook-form";
import type { RequirementsText } from "#lib/evaluation";
import type { ClausesText } from "#lib/requirement";
import { options } from "../../../../_components/form/choice-field";
import { freshId } from "../../../../_components/form/fresh-id";
import { problemAt } from "../../../../_components/form/problem-at";
import { RemovedNotice } from "../../../../_components/form/removed-notice";
import { CriterionEntry } from "./criterion-entry";
import { type CriterionText, measureChoices, startingCriterion } from "./measure-choices";
import styles from "./requirements.module.css";

/** The criteria in the order in which every page lists them; one at a time is open to be worked on. */
export function CriteriaList({ curves }: { curves: Readonly<Record<string, React.ReactNode>> }) {
  const { control, getValues, setValue, formState } = useFormContext<RequirementsText>();
  const { fields, append, remove, insert, move } = useFieldArray({ control, name: "criteria", keyName: "key" });
  const [removed, setRemoved] = useState<{ index: number; value: CriterionText; clauses: ClausesText } | null>(null);
  const [added, setAdded] = useState<string | null>(null);
  const [moved, setMoved] = useState("");
  const [measure, setMeasure] = useState("");
  const refocus = useRef<Element | null>(null);
  const problem = problemAt(formState.errors, "criteria");
  useEffect(() => {
    if (refocus.current instanceof HTMLElement) refocus.current.focus();
    refocus.current = null;
  });

  const add = () => {
    const taken = getValues("criteria").map(({ id }) => id);
    const value = startingCriterion(freshId("criterion", taken), measure);
    append(value, { shouldFocus: false });
    setAdded(value.id);
    setMeasure("");
  };
  const moveTo = (from: number, to: number) => {
    if (to < 0 || to >= fields.length) return;
    refocus.current = document.activeElement; // moving an element in the page takes the focus out of it
    move(from, to);
    setMoved(`${getValues(`criteria.${to}.label`)} is now number ${to + 1} of ${fields.length}.`);
  };
  return (
    <>
      {problem === null ? null : <p className={styles.problem}>{problem}</p>}
      {fields.length === 0 ? (
        <p>
          There are no criteria yet. Start from a profile, take single ones from the library, or choose a measure below.
        </p>
      ) : null}
      <ol className={styles.criteria}>
        {fields.map(({ key, id }, index) => (
          <CriterionEntry
            key={key}
            index={index}
            last={index === fields.length - 1}
            isNew={id === added}
            curve={curves[id] ?? null}
            moveTo={(to) => moveTo(index, to)}
            remove={() => {
              const value = structuredClone(getValues(`criteria.${index}`));
              const clauses = getValues("clauses") ?? [];
              setRemoved({
                index,
                value,
                clauses: structuredClone(clauses.filter(({ criterion }) => criterion === value.id)),
              });
              remove(index);
              if (clauses.length > 0)
                setValue(
                  "clauses",
                  clauses.filter(({ criterion }) => criterion !== value.id),
                );
            }}
          />
        ))}
      </ol>
      <p role="status" className="visually-hidden">
        {moved}
      </p>
      {removed === null ? null : (
        <RemovedNotice
          key={removed.value.id}
          what={`“${removed.value.label}”`}
          undo={() => {
            insert(removed.index, removed.value);
            if (removed.clauses.length > 0) setValue("clauses", [...(getValues("clauses") ?? []), ...removed.clauses]);
            setRemoved(null);
          }}
        />
      )}
      <div className={styles.add}>
        <label htmlFor="next-measure">Measure of the next criterion</label>
        <select id="next-measure" value={measure} onChange={({ target }) => setMeasure(target.value)}>
          <option value="">Choose a measure</option>
          {options(measureChoices)}
        </select>
        <button type="button" aria-disabled={measure === ""} onClick={() => (measure === "" ? undefined : add())}>
          Add a criterion
        </button>
      </div>
    </>
  );
}
