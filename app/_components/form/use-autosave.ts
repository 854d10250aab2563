"use client";
import { useCallback, useEffect, useRef, useState } from "react";
import type { FieldPath, FieldValues, UseFormReturn } from "react-hook-form";
import { differences } from "./differences";
import type { DocumentAddress, FieldProblem, SaveAction } from "./save-outcome";
import { forgetUnsent, keepUnsent, type UnsentText, unsentLeftBehind } from "./unsent-text";

/** What the reader is told about the text on the page. */
export type SaveState = Readonly<
  | { kind: "untouched" }
  | { kind: "typing" }
  | { kind: "saving" }
  | { kind: "saved"; at: string }
  | { kind: "kept"; at: string }
  | { kind: "kept-as-draft"; problems: readonly FieldProblem[] }
  | { kind: "conflict"; version: number; savedBy: string; savedAt: string; theirs: unknown }
  | { kind: "gone" }
  | { kind: "refused"; reason: string }
  | { kind: "unreachable" }
>;

const pauseBeforeSaving = 700; // ms after the last keystroke: long enough not to save half a word
const pauseBeforeRetry = 4000; // ms, when the server could not be reached

export type Autosave<Values> = Readonly<{
  state: SaveState;
  saveNow: () => void;
  /** Puts other text into the form and saves it. */
  replaceAll: (values: Values) => void;
  /** After a conflict: save what stands here over the other version. */
  keepMine: () => void;
  /** After a conflict: show the other version; the server keeps this one as a draft. */
  openTheirs: () => void;
}>;

const sameText = (one: unknown, other: unknown) => differences(one, other).length === 0;

/**
 * Saves a form by itself: one save at a time, never older text over newer, and everything unacknowledged kept in the
 * browser. The version the text was typed over travels with each save, so that a stale one is refused.
 */
export function useAutosave<Values extends FieldValues>(options: {
  form: UseFormReturn<Values>;
  where: DocumentAddress;
  version: number;
  save: SaveAction;
  /** What the form starts with: the document, or a draft of it with the problems that keep it one. */
  start: Readonly<{ kind: "document" } | { kind: "draft"; problems: readonly FieldProblem[] }>;
  /** True where the document can be read and not changed: nothing is sent then, nor brought back. */
  isClosed?: boolean;
  /** Called after each save, for what else the page shows of the document. */
  onSaved: (saved: UnsentText) => void;
  /**
   * Called where somebody else saved meanwhile: puts what they changed beside the text here and answers true, or false
   * where both changed the same.
   */
  takeTheirs?: (here: Readonly<{ version: number; theirs: unknown }>) => boolean;
  /** Called after each text that the server holds as a draft because it does not read yet. */
  onKeptAsDraft?: (draft: UnsentText) => void;
}): Autosave<Values> {
  const { form, save, onSaved, takeTheirs, onKeptAsDraft, isClosed = false } = options;
  const [where] = useState(options.where);
  const [start] = useState(options.start);
  const [state, setState] = useState<SaveState>(
    start.kind === "draft" && start.problems.length > 0
      ? { kind: "kept-as-draft", problems: start.problems }
      : { kind: "untouched" },
  );
  const version = useRef(options.version);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const inFlight = useRef(false);
  const changed = useRef(false); // since the last text that was sent
  const waitsForPerson = useRef(false); // a conflict is no matter for a timer

  const showProblems = useCallback(
    (problems: readonly FieldProblem[]) => {
      form.clearErrors();
      for (const { field, message } of problems) form.setError(field as FieldPath<Values>, { type: "server", message });
    },
    [form],
  );

  const send = useCallback(async () => {
    clearTimeout(timer.current);
    if (waitsForPerson.current || inFlight.current) return;
    inFlight.current = true;
    changed.current = false;
    setState({ kind: "saving" });
    const sent = structuredClone(form.getValues());
    const serverHasIt = () => {
      if (!changed.current) forgetUnsent(where);
    };
    const acknowledge = (saved: { kind: "saved" | "kept"; version: number; at: string }) => {
      version.current = saved.version;
      serverHasIt();
      showProblems([]);
      // what was typed meanwhile is not on the server, so the page must not call it saved
      setState(changed.current ? { kind: "typing" } : { kind: saved.kind, at: saved.at });
      onSaved({ version: saved.version, values: sent });
    };
    try {
      const outcome = await save({ ...where, version: version.current }, sent);
      switch (outcome.kind) {
        case "saved":
          acknowledge(outcome);
          break;
        case "kept":
          acknowledge({ ...outcome, version: version.current });
          break;
        case "rejected":
          serverHasIt();
          if (!changed.current) onKeptAsDraft?.({ version: version.current, values: sent });
          showProblems(outcome.problems);
          setState({ kind: "kept-as-draft", problems: outcome.problems });
          break;
        case "conflict":
          // an earlier save of this very text got through although its answer was lost
          if (sameText(sent, outcome.theirs)) {
            acknowledge({ kind: "saved", version: outcome.version, at: outcome.savedAt });
            break;
          }
          if (takeTheirs?.({ version: version.current, theirs: outcome.theirs })) {
            version.current = outcome.version;
            changed.current = true; // both texts together are on no server yet
            setState({ kind: "typing" });
            break;
          }
          waitsForPerson.current = true;
          setState(outcome);
          break;
        case "gone":
        case "refused":
          setState(outcome);
          break;
      }
    } catch {
      changed.current = true;
      setState({ kind: "unreachable" });
      timer.current = setTimeout(() => void send(), pauseBeforeRetry);
      return;
    } finally {
      inFlight.current = false;
    }
    if (!changed.current) return;
    clearTimeout(timer.current); // one may run already, from a change while this was under way
    timer.current = setTimeout(() => void send(), pauseBeforeSaving);
  }, [form, save, where, onSaved, takeTheirs, onKeptAsDraft, showProblems]);

  const noteChange = useCallback(() => {
    keepUnsent(where, { version: version.current, values: form.getValues() });
    changed.current = true;
    if (waitsForPerson.current) return;
    setState((now) => (now.kind === "saving" ? now : { kind: "typing" }));
    clearTimeout(timer.current);
    timer.current = setTimeout(() => void send(), pauseBeforeSaving);
  }, [form, send, where]);

  const replaceAll = useCallback(
    (values: Values) => {
      form.reset(values);
      noteChange();
    },
    [form, noteChange],
  );

  useEffect(() => {
    if (isClosed) return undefined;
    let here = true;
    const watching = form.watch(noteChange);
    if (start.kind === "draft") {
      if (start.problems.length > 0) showProblems(start.problems);
      else noteChange();
    }
    void unsentLeftBehind(where).then((left) => {
      if (!here || left === null || changed.current) return;
      if (!sameText(left.values, form.getValues())) {
        version.current = left.version;
        replaceAll(left.values as Values);
      }
      left.forget();
    });
    const sendWhenHidden = () => {
      if (document.visibilityState === "hidden" && changed.current) void send();
    };
    document.addEventListener("visibilitychange", sendWhenHidden);
    return () => {
      here = false;
      watching.unsubscribe();
      document.removeEventListener("visibilitychange", sendWhenHidden);
      clearTimeout(timer.current);
      if (changed.current) void send();
    };
  }, [form, isClosed, noteChange, replaceAll, send, showProblems, start, where]);

  const keepMine = useCallback(() => {
    if (state.kind !== "conflict") return;
    version.current = state.version;
    waitsForPerson.current = false;
    void send();
  }, [send, state]);

  const openTheirs = useCallback(() => {
    forgetUnsent(where);
    changed.current = false;
    location.reload();
  }, [where]);

  return { state, saveNow: () => void send(), replaceAll, keepMine, openTheirs };
}
