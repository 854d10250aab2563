"use client";
import { useId, useState } from "react";
import { useController } from "react-hook-form";
import { FieldFrame, fieldAttributes } from "../../../../../_components/form/field-frame";
import { type Cell, pathOf } from "./claim-cell";

/** One thing to choose by typing. `hint` stands beside it in the list. */
export type Suggestion = Readonly<{ id: string; label: string; hint?: string }>;

/**
 * A choice among many things, made by typing: a part of the name is enough where it fits one thing only. The form holds
 * the id; text that names nothing stays as it is, so that it is not lost. The list is drawn for the cell in use alone,
 * since sixty rows of a hundred entries would be slow.
 */
export function TypeAheadCell({
  cell,
  suggestions,
  complete,
  labelOf,
}: {
  cell: Cell;
  suggestions: readonly Suggestion[];
  /** The id that a text stands for, whole or begun; null where it stands for none or for several. */
  complete: (text: string) => string | null;
  labelOf: (text: string) => string;
}) {
  const id = useId();
  const name = pathOf(cell);
  const { field, fieldState } = useController({ control: cell.control, name, exact: true });
  const [typed, setTyped] = useState<string | null>(null);
  const problem = fieldState.error?.message ?? null;
  const words = { name, label: cell.label };
  const stored = field.value ?? "";
  const settle = (text: string) => {
    const completed = complete(text);
    if (completed !== null && completed !== stored) field.onChange(completed);
    return completed;
  };
  return (
    <FieldFrame id={id} words={words} problem={problem}>
      <input
        ref={field.ref}
        type="text"
        name={name}
        autoComplete="off"
        spellCheck={false}
        data-column={cell.field}
        list={`${id}-list`}
        value={typed ?? labelOf(stored)}
        onFocus={() => setTyped(labelOf(stored))}
        onChange={({ target }) => {
          setTyped(target.value);
          const whole = suggestions.find(({ label }) => label === target.value);
          field.onChange(whole?.id ?? target.value);
        }}
        // before the focus moves on: the next cell is drawn for the property that was typed
        onKeyDown={({ key, currentTarget }) => {
          if (key !== "Tab" && key !== "Enter") return;
          const completed = settle(currentTarget.value);
          if (completed !== null) setTyped(labelOf(completed));
        }}
        onBlur={({ target }) => {
          setTyped(null);
          settle(target.value);
          field.onBlur();
        }}
        {...fieldAttributes(id, words, problem)}
      />
      {typed === null ? null : (
        <datalist id={`${id}-list`}>
          {suggestions.map(({ id: suggestion, label, hint }) => (
            <option key={suggestion} value={label} label={hint} />
          ))}
        </datalist>
      )}
    </FieldFrame>
  );
}
