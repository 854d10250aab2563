"use client";
import { useId } from "react";
import { useFormContext } from "react-hook-form";
import { FieldFrame, type FieldWords, fieldAttributes } from "./field-frame";
import { problemAt } from "./problem-at";

/** Several lines of text. */
export function LongTextField({ rows = 3, ...words }: FieldWords & { rows?: number }) {
  const { register, getValues, formState } = useFormContext();
  const id = useId();
  const problem = problemAt(formState.errors, words.name);
  return (
    <FieldFrame id={id} words={words} problem={problem}>
      <textarea
        rows={rows}
        defaultValue={getValues(words.name)}
        {...register(words.name)}
        {...fieldAttributes(id, words, problem)}
      />
    </FieldFrame>
  );
}
