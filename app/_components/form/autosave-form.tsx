"use client";
import { zodResolver } from "@hookform/resolvers/zod";
import { useRouter } from "next/navigation";
import { useCallback, useEffect, useId, useRef, useState } from "react";
import { type DefaultValues, type FieldValues, FormProvider, type Resolver, useForm } from "react-hook-form";
import type { z } from "zod";
import styles from "./autosave-form.module.css";
import { ConflictNotice } from "./conflict-notice";
import { DraftNotice } from "./draft-notice";
import { goToFirstProblem } from "./first-problem";
import { openTarget } from "./open-target";
import type { DocumentAddress, SaveAction } from "./save-outcome";
import { SaveStatus } from "./save-status";
import { type Draft, startOf } from "./start-of";
import { useAutosave } from "./use-autosave";

/**
 * A form that saves itself. The schema is the one the server and the file import use, so a field says the same sentence
 * everywhere. Text that can't be read yet is kept as a draft beside the document and never thrown away. After each save
 * the server's part of the page is fetched anew.
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
  // The page is fetched anew while it is open; what the form started with is settled once.
  const [begun] = useState(() => startOf({ schema, version, values, draft }));
  const form = useForm<Values>({
    defaultValues: begun.values as DefaultValues<Values>,
    resolver: zodResolver(schema as z.ZodType<FieldValues, Values>) as unknown as Resolver<Values>,
    mode: "onBlur",
  });
  const router = useRouter();
  const onSaved = useCallback(() => router.refresh(), [router]);
  const autosave = useAutosave({ form, where, version, save, start: begun.start, onSaved });
  const { state, saveNow, replaceAll, keepMine, openTheirs } = autosave;
  const element = useRef<HTMLFormElement>(null);
  const statusId = useId();
  useEffect(() => {
    openTarget();
    window.addEventListener("hashchange", openTarget);
    return () => window.removeEventListener("hashchange", openTarget);
  }, []);
  return (
    <FormProvider {...form}>
      <form
        ref={element}
        aria-label={label}
        aria-describedby={statusId}
        noValidate
        className={styles.form}
        onMouseDown={letClickLand}
        onSubmit={async (event) => {
          event.preventDefault();
          saveNow();
          if (!(await form.trigger())) goToFirstProblem(element.current);
        }}
      >
        {state.kind === "conflict" ? (
          <ConflictNotice conflict={state} mine={form.getValues()} keepMine={keepMine} openTheirs={openTheirs} />
        ) : null}
        {begun.olderDraft === null ? null : (
          <DraftNotice where={where} draft={begun.olderDraft} stored={values} bringBack={replaceAll} />
        )}
        {children}
        <SaveStatus id={statusId} state={state} goToProblem={() => goToFirstProblem(element.current)} />
      </form>
    </FormProvider>
  );
}

/**
 * Leaving a field may show a sentence under it that moves the button being pressed away before it is released. So a
 * press alone does not take the focus out of the field; the click then lands.
 */
function letClickLand(event: React.MouseEvent): void {
  if (event.target instanceof Element && event.target.closest("button, summary") !== null) event.preventDefault();
}
