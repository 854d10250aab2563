"use client";
import { zodResolver } from "@hookform/resolvers/zod";
import { useId } from "react";
import { type DefaultValues, type FieldValues, FormProvider, type Resolver, useForm } from "react-hook-form";
import type { z } from "zod";
import styles from "./autosave-form.module.css";
import { ConflictNotice } from "./conflict-notice";
import { DraftNotice } from "./draft-notice";
import type { DocumentAddress, SaveAction } from "./save-outcome";
import { SaveStatus } from "./save-status";
import { useAutosave } from "./use-autosave";

export type Draft<Values> = Readonly<{ basedOn: number; values: Values }>;

/**
 * A form that saves itself. The schema is the one the server and the file import use, so a field says the same sentence
 * everywhere. Text that can't be read yet is kept as a draft beside the document and never thrown away.
 */
export function AutosaveForm<Values extends FieldValues>({
  schema,
  where,
  version,
  values,
  draft,
  save,
  label,
  children,
}: {
  schema: z.ZodType<unknown, Values>;
  where: DocumentAddress;
  version: number;
  values: Values;
  /** Text of this editor that reached the server but is not part of the document. */
  draft: Draft<Values> | null;
  save: SaveAction;
  label: string;
  children: React.ReactNode;
}) {
  const goesOn = draft !== null && draft.basedOn === version;
  const form = useForm<Values>({
    defaultValues: (goesOn ? draft.values : values) as DefaultValues<Values>,
    resolver: zodResolver(schema as z.ZodType<FieldValues, Values>) as unknown as Resolver<Values>,
    mode: "onBlur",
    shouldFocusError: true,
  });
  const { state, saveNow, replaceAll, keepMine, openTheirs } = useAutosave({ form, where, version, save });
  const statusId = useId();
  const focusFirstProblem = (fields: readonly string[]) => {
    const [first] = fields;
    if (first !== undefined) document.getElementsByName(first)[0]?.focus();
  };
  return (
    <FormProvider {...form}>
      <form
        aria-label={label}
        aria-describedby={statusId}
        noValidate
        className={styles.form}
        onSubmit={(event) => {
          event.preventDefault();
          void form.handleSubmit(saveNow, () => saveNow())();
        }}
      >
        {state.kind === "conflict" ? (
          <ConflictNotice conflict={state} mine={form.getValues()} keepMine={keepMine} openTheirs={openTheirs} />
        ) : null}
        {draft === null || goesOn ? null : (
          <DraftNotice draft={draft.values} stored={values} bringBack={() => replaceAll(draft.values)} />
        )}
        {children}
        <SaveStatus id={statusId} state={state} goToProblem={focusFirstProblem} />
      </form>
    </FormProvider>
  );
}
