"use client";
import { useId, useRef, useState } from "react";
import { useFormContext, useWatch } from "react-hook-form";
import { type Choice, choicesBeside, options } from "./choice-field";
import { FieldFrame, type FieldWords, fieldAttributes } from "./field-frame";
import { type KindTemplate, ofKind } from "./of-kind";
import { problemAt } from "./problem-at";

/**
 * The choice between kinds of one thing, with the fields of the chosen kind below it. Going to another kind and back
 * brings back what was typed.
 */
export function KindField<Kind extends string>({
  choices,
  templates,
  fields,
  ...words
}: FieldWords & {
  choices: readonly Choice[];
  /** What the fields of each kind start with. */
  templates: Readonly<Record<Kind, KindTemplate>>;
  fields: (kind: Kind) => React.ReactNode;
}) {
  const { register, getValues, setValue, clearErrors, formState } = useFormContext();
  const id = useId();
  const typed = useRef<KindTemplate>({});
  const name = `${words.name}.kind`;
  const kind: Kind = useWatch({ name });
  const [held] = useState<unknown>(() => getValues(name));
  const problem = problemAt(formState.errors, name) ?? problemAt(formState.errors, words.name);
  const goTo = (next: Kind) => {
    typed.current = { ...typed.current, ...getValues(words.name) };
    clearErrors(words.name);
    setValue(words.name, ofKind(next, templates[next], typed.current));
  };
  return (
    <>
      <FieldFrame id={id} words={words} problem={problem}>
        <select
          defaultValue={kind}
          {...register(name, { onChange: ({ target }) => goTo(target.value) })}
          {...fieldAttributes(id, words, problem)}
        >
          {options(choicesBeside(choices, held))}
        </select>
      </FieldFrame>
      {fields(kind)}
    </>
  );
}
