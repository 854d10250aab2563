"use client";
import { useFieldArray, useFormContext, useWatch } from "react-hook-form";
import { submittalKinds } from "#lib/requirement";
import { ChecksField } from "../../../../../_components/form/check-field";
import { ChoiceField } from "../../../../../_components/form/choice-field";
import { freshId } from "../../../../../_components/form/fresh-id";
import { TextField } from "../../../../../_components/form/text-field";
import { useUndo } from "../../../_components/use-undo";
import type { ClausesValues } from "./clause-values";
import styles from "./clauses.module.css";

const kinds = Object.entries(submittalKinds).map(([value, { label }]) => ({ value, label }));

/** What the owner asks for beyond what clauses ask, each with the clauses that use it. */
export function SubmittalFields() {
  const { control, getValues } = useFormContext<ClausesValues>();
  const { fields, append, insert, remove } = useFieldArray({ control, name: "submittals", keyName: "key" });
  const { keep, notice } = useUndo<ClausesValues["submittals"][number]>(insert);
  const clauses = useWatch({ control, name: "clauses" });
  const criteria = useWatch({ control, name: "criteria" });
  const users = clauses.map(({ id, criterion, label }) => ({
    value: id,
    label: criteria.find((each) => each.id === criterion)?.label ?? (label || "Clause without a name"),
  }));
  return (
    <>
      <ol className={styles.clauses}>
        {fields.map(({ key, item }, index) => (
          <li key={key} id={`submittals.${index}`} className={styles.clause}>
            <fieldset>
              <legend className="visually-hidden">Submittal {index + 1}</legend>
              <div className={styles.group}>
                <TextField name={`submittals.${index}.item`} label="What is to be handed in" />
                <ChoiceField name={`submittals.${index}.kind`} label="Kind" choices={kinds} />
              </div>
              <ChecksField name={`submittals.${index}.usedBy`} label="Clauses that use it" choices={users} />
            </fieldset>
            <button
              type="button"
              className="plain screen-only"
              onClick={() => {
                const value = structuredClone(getValues(`submittals.${index}`));
                remove(index);
                keep({ index, value, words: `“${value.item || "the submittal"}”` });
              }}
            >
              Remove<span className="visually-hidden"> {item}</span>
            </button>
          </li>
        ))}
      </ol>
      {notice}
      <p className="screen-only">
        <button
          type="button"
          onClick={() => {
            const taken = getValues("submittals").map(({ id }) => id);
            append(
              { id: freshId("submittal", taken), item: "", kind: "test-report", usedBy: [] },
              { focusName: `submittals.${fields.length}.item` },
            );
          }}
        >
          Add a submittal
        </button>
      </p>
    </>
  );
}
