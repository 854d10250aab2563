"use client";
import { zodResolver } from "@hookform/resolvers/zod";
import { useRouter } from "next/navigation";
import { useEffect, useId, useRef, useState } from "react";
import { type DefaultValues, type FieldValues, FormProvider, type Path, type Resolver, useForm } from "react-hook-form";
import type { z } from "zod";
import styles from "./autosave-form.module.css";
import { ChangedStatus, MarkedFields } from "./changed-marks";
import { ClosedFields, useClosedWhole } from "./closed";
import { ConflictNotice } from "./conflict-notice";
import { conflictPage } from "./conflict-page";
import { differences } from "./differences";
import { DraftNotice } from "./draft-notice";
import { goToFirstProblem } from "./first-problem";
import { GoneNotice } from "./gone-notice";
import { openTarget } from "./open-target";
import type { DocumentAddress, FieldProblem, SaveAction } from "./save-outcome";
import { SaveStatus } from "./save-status";
import { othersParts, ownParts, type SharedDocument } from "./shared-document";
import { type Draft, startOf } from "./start-of";
import { useAutosave } from "./use-autosave";
import { useOthersChanges } from "./use-others-changes";

const waitsForPage = 8000; // ms until somebody is asked with what the save answered, as the page did not come

/**
 * A form that saves itself. The schema is the one the server and the file import use, so a field says the same sentence
 * everywhere. Text that can't be read yet is kept as a draft beside the document and never thrown away. After each save
 * the server's part of the page is fetched anew, and what others saved meanwhile is taken in.
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
  const element = useRef<HTMLFormElement>(null);
  const others = useOthersChanges({ form, element, where, version, values });
  const autosave = useAutosave({
    ...{ form, where, version, save, start: begun.start, onSaved: others.onSaved, onStale: others.onStale },
    isClosed: closed !== null,
  });
  const { state, saveNow, replaceAll, keepMine, openTheirs, handOver } = autosave;
  const { follow, giveUpWaiting } = others;
  useEffect(() => follow(autosave, { version, values }));
  useEffect(() => {
    if (state.kind !== "joining") return undefined;
    const timer = setTimeout(giveUpWaiting, waitsForPage);
    return () => clearTimeout(timer);
  }, [giveUpWaiting, state.kind]);
  const router = useRouter();
  const choosing = conflictPage(where);
  const chooseEach = async () => {
    await handOver();
    if (choosing !== null) router.push(choosing);
  };
  const putTheirs = (theirs: unknown) => {
    if (shared === null) return;
    for (const [part, value] of othersParts(theirs, shared)) form.setValue(part as Path<Values>, value);
  };
  const ofPage = (all: Values): Partial<Values> => (shared === null ? all : ownParts(all, shared));
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
        onBlur={others.leftField}
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
            chooseEach={choosing === null ? undefined : () => void chooseEach()}
          />
        ) : null}
        {others.removedBy === null ? null : <GoneNotice by={others.removedBy} />}
        {begun.olderDraft === null || differences(ofPage(begun.olderDraft), ofPage(values)).length === 0 ? null : (
          <DraftNotice
            where={where}
            draft={ofPage(begun.olderDraft)}
            stored={ofPage(values)}
            bringBack={(draft) => replaceAll({ ...form.getValues(), ...draft })}
          />
        )}
        <MarkedFields marks={others.marks}>
          <ClosedFields sentence={closed}>{children}</ClosedFields>
        </MarkedFields>
        <ChangedStatus marks={others.marks} />
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
