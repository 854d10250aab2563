"use client";
import { useState } from "react";
import { useFieldArray, useFormContext, useWatch } from "react-hook-form";
import { ChoiceField } from "../../../../_components/form/choice-field";
import { KindField } from "../../../../_components/form/kind-field";
import { problemAt } from "../../../../_components/form/problem-at";
import { TextField } from "../../../../_components/form/text-field";
import { useUndo } from "../../_components/use-undo";
import { MethodFields, type ToWeigh } from "./method-fields";
import styles from "./requirements.module.css";
import { type PersonsKind, type PersonText, personsChoices, personsTemplates } from "./weighing-rows";

const shown = [
  { value: "apart", label: "The mean counts; the evaluation also shows the order by each person’s own weights" },
  { value: "mean-only", label: "The mean counts; the evaluation shows nobody’s own weights" },
];

type PeopleText = { weighing: { people: PersonText[] } };

/** Several people, each with weights of their own, given in whichever way suits them. */
export function PeopleFields({ toWeigh }: { toWeigh: ToWeigh }) {
  const { control, getValues, formState } = useFormContext<PeopleText>();
  const { fields, append, remove, insert } = useFieldArray({ control, name: "weighing.people" });
  const { keep, notice } = useUndo<PersonText>((index, value) => insert(index, value));
  const problem = problemAt(formState.errors, "weighing.people");
  return (
    <>
      <p className={styles.note}>
        Everybody counts alike, however many points they give. Nobody’s figures change what anybody else has entered.
      </p>
      <ChoiceField name="weighing.shown" label="What is shown" choices={shown} className={styles.wide} />
      {problem === null ? null : <p className={styles.problem}>{problem}</p>}
      {fields.map(({ id }, index) => (
        <PersonEntry
          key={id}
          index={index}
          toWeigh={toWeigh}
          remove={() => {
            const value = structuredClone(getValues(`weighing.people.${index}`));
            keep({ index, value, words: value.person === "" ? "the person" : `“${value.person}”` });
            remove(index);
          }}
        />
      ))}
      {notice}
      <button type="button" onClick={() => append({ person: "", method: { kind: "points", points: [] } })}>
        Add a person
      </button>
    </>
  );
}

/** One person behind a line with the name; a new one stands open. */
function PersonEntry({ index, toWeigh, remove }: { index: number; toWeigh: ToWeigh; remove: () => void }) {
  const at = `weighing.people.${index}`;
  const person: string = useWatch({ name: `${at}.person` }) ?? "";
  const [isNew] = useState(person === "");
  return (
    <details className={styles.person} open={isNew}>
      <summary>
        <strong>{person === "" ? `Person ${index + 1}` : person}</strong>
      </summary>
      <TextField
        name={`${at}.person`}
        label={`Name or office of person ${index + 1}`}
        hint="For instance “Facilities”."
        className={styles.wide}
      />
      <KindField<PersonsKind>
        name={`${at}.method`}
        label={`How person ${index + 1} gives weights`}
        choices={personsChoices}
        templates={personsTemplates}
        className={styles.wide}
        fields={(kind) => <MethodFields at={`${at}.method`} kind={kind} toWeigh={toWeigh} />}
      />
      <button type="button" onClick={remove}>
        Remove<span className="visually-hidden"> person {index + 1}</span>
      </button>
    </details>
  );
}
