"use client";
import { useId } from "react";
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

/** One of a few named things. */
export function ChoiceField({ choices, ...words }: FieldWords & { choices: readonly Choice[] }) {
  const { register, getValues, formState } = useFormContext();
  const id = useId();
  const problem = problemAt(formState.errors, words.name);
  return (
    <FieldFrame id={id} words={words} problem={problem}>
      <select defaultValue={getValues(words.name)} {...register(words.name)} {...fieldAttributes(id, words, problem)}>
        {options(choices)}
      </select>
    </FieldFrame>
  );
}
