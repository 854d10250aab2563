"use client";
import { zodResolver } from "@hookform/resolvers/zod";
import { useRouter } from "next/navigation";
import { useCallback, useEffect, useId, useRef, useState } from "react";
import { type DefaultValues, type FieldValues, FormProvider, type Path, type Resolver, useForm } from "react-hook-form";
import type { z } from "zod";
import styles from "./autosave-form.module.css";
import { ClosedFields, useClosedWhole } from "./closed";
import { ConflictNotice } from "./conflict-notice";
import { differences } from "./differences";
import { DraftNotice } from "./draft-notice";
import { goToFirstProblem } from "./first-problem";
import { openTarget } from "./open-target";
import type { DocumentAddress, FieldProblem, SaveAction } from "./save-outcome";
import { SaveStatus } from "./save-status";
import { isOwnUntouched, othersParts, ownParts, type SharedDocument } from "./shared-document";
import { type Draft, startOf } from "./start-of";
import type { UnsentText } from "./unsent-text";
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
  shared = null,
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
  /** What the page edits of a document that other pages edit as well. It must not change while the page is open. */
  shared?: SharedDocument<Values> | null;
  children: React.ReactNode;
}) {
  const closed = useClosedWhole(where.kind);
  // The page is fetched anew while it is open; what the form started with is settled once.
  const [begun] = useState(() => startOf({ schema, version, values, draft: closed === null ? draft : null }));
  const form = useForm<Values>({
    defaultValues: begun.values as DefaultValues<Values>,
    resolver: zodResolver(schema as z.ZodType<FieldValues, Values>) as unknown as Resolver<Values>,
    mode: "onBlur",
  });
  const router = useRouter();
  const known = useRef({ version, values }); // the document as it was last heard of
  const onSaved = useCallback(
    (saved: UnsentText) => {
      known.current = { version: saved.version, values: saved.values as Values };
      router.refresh();
    },
    [router],
  );
  const putTheirs = useCallback(
    (theirs: unknown) => {
      if (shared === null) return;
      for (const [part, value] of othersParts(theirs, shared)) form.setValue(part as Path<Values>, value);
    },
    [form, shared],
  );
  const takeTheirs = useCallback(
    ({ version: over, theirs }: Readonly<{ version: number; theirs: unknown }>) => {
      if (shared === null || known.current.version !== over) return false;
      if (!isOwnUntouched({ known: known.current.values, theirs }, shared)) return false;
      putTheirs(theirs);
      return true;
    },
    [putTheirs, shared],
  );
  const autosave = useAutosave({
    ...{ form, where, version, save, start: begun.start, onSaved, takeTheirs },
    isClosed: closed !== null,
  });
  const { state, saveNow, replaceAll, keepMine, openTheirs } = autosave;
  const ofPage = (all: Values): Partial<Values> => (shared === null ? all : ownParts(all, shared));
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
        {...(closed === null ? { "aria-describedby": statusId } : {})}
        noValidate
        className={styles.form}
        onMouseDown={letClickLand}
        onSubmit={async (event) => {
          event.preventDefault();
          if (closed !== null) return;
          saveNow();
          if (!(await form.trigger())) goToFirstProblem(element.current);
        }}
      >
        {state.kind === "conflict" ? (
          <ConflictNotice
            conflict={shared === null ? state : { ...state, theirs: ownParts(shared.filled(state.theirs), shared) }}
            mine={ofPage(form.getValues())}
            keepMine={() => {
              putTheirs(state.theirs);
              keepMine();
            }}
            openTheirs={openTheirs}
          />
        ) : null}
        {begun.olderDraft === null || differences(ofPage(begun.olderDraft), ofPage(values)).length === 0 ? null : (
          <DraftNotice
            where={where}
            draft={ofPage(begun.olderDraft)}
            stored={ofPage(values)}
            bringBack={(draft) => replaceAll({ ...form.getValues(), ...draft })}
          />
        )}
        <ClosedFields sentence={closed}>{children}</ClosedFields>
        {shared !== null && state.kind === "kept-as-draft" && elsewhere(state.problems, shared.parts) ? (
          <p role="status">
            <strong>Not here, but on another page:</strong> an entry of the same document can’t be read yet. Until it is
            mended there, what you change here is kept and does not count.
          </p>
        ) : null}
        {closed === null ? (
          <SaveStatus id={statusId} state={state} goToProblem={() => goToFirstProblem(element.current)} />
        ) : null}
      </form>
    </FormProvider>
  );
}

/** Whether something that can't be read stands in no part of this page. */
const elsewhere = (problems: readonly FieldProblem[], parts: readonly string[]): boolean =>
  problems.some(({ field }) => !parts.includes(field.split(".")[0] ?? ""));

/**
 * Leaving a field may show a sentence under it that moves the button being pressed away before it is released. So a
 * press alone does not take the focus out of the field; the click then lands.
 */
function letClickLand(event: React.MouseEvent): void {
  if (event.target instanceof Element && event.target.closest("button, summary") !== null) event.preventDefault();
}
