"use client";
import { useId } from "react";
import { type Control, type UseFormGetValues, useController, useFormState } from "react-hook-form";
import type { ClaimField } from "#lib/claim";
import type { BidText } from "#lib/evaluation";
import { FieldFrame, fieldAttributes } from "../../../../../_components/form/field-frame";
import { problemAt } from "../../../../../_components/form/problem-at";
import type { ClaimPath } from "./ledger-columns";

/** Where a cell stands. The label is shown where the table is stacked and read out everywhere. */
export type Cell = Readonly<{
  control: Control<BidText>;
  getValues: UseFormGetValues<BidText>;
  index: number;
  field: ClaimField;
  label: string;
}>;

export const pathOf = ({ index, field }: Cell): ClaimPath => `claims.${index}.${field}`;

/** A text of the ledger. It re-renders for its own problem only, not for what is typed. */
export function TextCell({
  cell,
  list,
  onInput,
  children,
  reading,
}: {
  cell: Cell;
  list?: string;
  onInput?: (text: string) => void;
  children?: React.ReactNode;
  /** How the text was read: shown under it and read out with it. */
  reading?: React.ReactNode;
}) {
  const id = useId();
  const name = pathOf(cell);
  const { errors } = useFormState({ control: cell.control, name, exact: true });
  const problem = problemAt(errors, name);
  const words = { name, label: cell.label };
  const attributes = fieldAttributes(id, words, problem);
  const readingId = reading === undefined ? [] : [`${id}-reading`];
  const describedBy = [...readingId, attributes["aria-describedby"] ?? ""].join(" ").trim();
  return (
    <FieldFrame id={id} words={words} problem={problem}>
      <input
        type="text"
        autoComplete="off"
        data-column={cell.field}
        defaultValue={cell.getValues(name)}
        {...cell.control.register(name)}
        {...attributes}
        {...(describedBy === "" ? {} : { "aria-describedby": describedBy })}
        {...(list === undefined ? {} : { list })}
        {...(onInput === undefined
          ? {}
          : { onInput: ({ currentTarget }: React.FormEvent<HTMLInputElement>) => onInput(currentTarget.value) })}
      />
      {children}
      {reading === undefined ? null : <span id={`${id}-reading`}>{reading}</span>}
    </FieldFrame>
  );
}

/** A choice of the ledger. Text that is none of the choices stays as an entry of its own, so that it is not lost. */
export function SelectCell({
  cell,
  known,
  unlisted,
  children,
}: {
  cell: Cell;
  /** Whether a text is the value of one of the options in `children`. */
  known: (text: string) => boolean;
  /** What an entry says whose text is the value of no option. */
  unlisted: (text: string) => string;
  children: React.ReactNode;
}) {
  const id = useId();
  const name = pathOf(cell);
  const { field, fieldState } = useController({ control: cell.control, name, exact: true });
  const problem = fieldState.error?.message ?? null;
  const words = { name, label: cell.label };
  const text = field.value ?? "";
  return (
    <FieldFrame id={id} words={words} problem={problem}>
      <select
        ref={field.ref}
        name={name}
        value={text}
        onChange={field.onChange}
        onBlur={field.onBlur}
        data-column={cell.field}
        {...fieldAttributes(id, words, problem)}
      >
        {known(text) ? null : <option value={text}>{unlisted(text)}</option>}
        {children}
      </select>
    </FieldFrame>
  );
}
