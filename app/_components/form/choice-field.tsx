"use client";
import { useId, useState } from "react";
import { useFormContext } from "react-hook-form";
import { FieldFrame, type FieldWords, fieldAttributes } from "./field-frame";
import { problemAt } from "./problem-at";

export type Choice = Readonly<{ value: string; label: string; group?: string }>;

const option = ({ value, label }: Choice) => (
  <option key={value} value={value}>
    {label}
  </option>
);

/** The choices as options; those that share a `group` stand under its name. */
export function options(choices: readonly Choice[]): React.ReactNode {
  const groups = [...new Set(choices.map(({ group }) => group))];
  return groups.map((group) => {
    const members = choices.filter((choice) => choice.group === group).map(option);
    if (group === undefined) return members;
    return (
      <optgroup key={group} label={group}>
        {members}
      </optgroup>
    );
  });
}

/** The choices and, where a file brought a text that is none of them, that text as it was read: it needs attention. */
export function choicesBeside(choices: readonly Choice[], held: unknown): readonly Choice[] {
  if (typeof held !== "string" || choices.some(({ value }) => value === held)) return choices;
  return [{ value: held, label: held === "" ? "Not chosen" : `“${held}”, not one of these` }, ...choices];
}

/** One of a few named things. */
export function ChoiceField({ choices, ...words }: FieldWords & { choices: readonly Choice[] }) {
  const { register, getValues, formState } = useFormContext();
  const id = useId();
  const problem = problemAt(formState.errors, words.name);
  const [held] = useState<unknown>(() => getValues(words.name));
  return (
    <FieldFrame id={id} words={words} problem={problem}>
      <select defaultValue={getValues(words.name)} {...register(words.name)} {...fieldAttributes(id, words, problem)}>
        {options(choicesBeside(choices, held))}
      </select>
    </FieldFrame>
  );
}
