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

/** One of a few named things. Choices that share a `group` stand under its name. */
export function ChoiceField({ choices, ...words }: FieldWords & { choices: readonly Choice[] }) {
  const { register, formState } = useFormContext();
  const id = useId();
  const problem = problemAt(formState.errors, words.name);
  const groups = [...new Set(choices.map(({ group }) => group))];
  return (
    <FieldFrame id={id} words={words} problem={problem}>
      <select {...register(words.name)} {...fieldAttributes(id, words, problem)}>
        {groups.map((group) => {
          const members = choices.filter((choice) => choice.group === group).map(option);
          return group === undefined ? (
            members
          ) : (
            <optgroup key={group} label={group}>
              {members}
            </optgroup>
          );
        })}
      </select>
    </FieldFrame>
  );
}
