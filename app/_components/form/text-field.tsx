"use client";
import { useId, useState } from "react";
import { useFormContext } from "react-hook-form";
import type { DimensionName } from "#lib/quantity";
import { FieldFrame, type FieldWords, fieldAttributes } from "./field-frame";
import { useCurrency } from "./money-of";
import { problemAt } from "./problem-at";
import { unitSuggestions } from "./unit-suggestions";

/** One line of text. With a dimension it suggests, while a number is typed, that number in the dimension's units. */
export function TextField({ dimension, ...words }: FieldWords & { dimension?: DimensionName }) {
  const { register, getValues, formState } = useFormContext();
  const id = useId();
  const currency = useCurrency();
  const [suggestions, setSuggestions] = useState<readonly string[]>([]);
  const problem = problemAt(formState.errors, words.name);
  const suggests =
    dimension === undefined
      ? {}
      : {
          list: `${id}-units`,
          onInput: ({ currentTarget }: React.FormEvent<HTMLInputElement>) =>
            setSuggestions(unitSuggestions(currentTarget.value, dimension, currency)),
        };
  return (
    <FieldFrame id={id} words={words} problem={problem}>
      <input
        type="text"
        autoComplete="off"
        defaultValue={getValues(words.name)}
        {...register(words.name)}
        {...fieldAttributes(id, words, problem)}
        {...suggests}
      />
      {dimension === undefined ? null : (
        <datalist id={`${id}-units`}>
          {suggestions.map((suggestion) => (
            <option key={suggestion} value={suggestion} />
          ))}
        </datalist>
      )}
    </FieldFrame>
  );
}
