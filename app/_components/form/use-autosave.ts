"use client";
import { useCallback, useEffect, useRef, useState } from "react";
import type { FieldPath, FieldValues, UseFormReturn } from "react-hook-form";
import { differences } from "./differences";
import type { DocumentAddress, FieldProblem, SaveAction, SaveOutcome } from "./save-outcome";
import { forgetUnsent, keepUnsent, type UnsentText, unsentLeftBehind } from "./unsent-text";

/** What the reader is told about the text on the page. */
export type SaveState = Readonly<
  | { kind: "untouched" }
  | { kind: "typing" }
  | { kind: "saving" }
  | { kind: "saved"; at: string }
  | { kind: "kept"; at: string }
  | { kind: "kept-as-draft"; problems: readonly FieldProblem[] }
  | { kind: "joining"; savedBy: string }
  | Stale
  | { kind: "gone" }
  | { kind: "refused"; reason: string }
  | { kind: "unreachable" }
>;

/** Somebody else saved meanwhile. `base` is the text that both started from, null where it is not known. */
export type Stale = Extract<SaveOutcome, { kind: "conflict" }>;

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
  /** After a conflict: hands the text as it stands here to the server as a draft, and lets go of the browser's copy. */
  handOver: () => Promise<void>;
  /** The version that the text here was typed over; null while a save is under way or somebody has to choose. */
  standsOver: () => number | null;
  /** Puts what others changed into the form and lets it stand over their version, which held `theirs`. */
  standOn: (version: number, put: () => void, theirs: unknown) => void;
  /** Asks whoever sits here, as both texts do not go together. */
  ask: (stale: Stale) => void;
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
  /** Called where somebody else saved meanwhile: answers true where the form will bring both texts together by `standOn`, or `ask`. */
  onStale?: (stale: Stale, over: number) => boolean;
  /** Called after each text that the server holds as a draft because it does not read yet. */
  onKeptAsDraft?: (draft: UnsentText) => void;
}): Autosave<Values> {
  const { form, save, onSaved, onStale, onKeptAsDraft, isClosed = false } = options;
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
  const waits = useRef(false); // a conflict is no matter for a timer
  const putting = useRef(false);
  const stored = useRef<unknown>(null); // what others saved, while the form holds just that

  const showProblems = useCallback(
    (problems: readonly FieldProblem[]) => {
      form.clearErrors();
      for (const { field, message } of problems) form.setError(field as FieldPath<Values>, { type: "server", message });
    },
    [form],
  );

  const send = useCallback(async () => {
    clearTimeout(timer.current);
    if (waits.current || inFlight.current) return;
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
          waits.current = true;
          changed.current = true; // the server holds it as a draft only
          setState(onStale?.(outcome, version.current) ? { kind: "joining", savedBy: outcome.savedBy } : outcome);
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
    if (!changed.current || waits.current) return;
    clearTimeout(timer.current); // one may run already, from a change while this was under way
    timer.current = setTimeout(() => void send(), pauseBeforeSaving);
  }, [form, save, where, onSaved, onStale, onKeptAsDraft, showProblems]);

  const noteChange = useCallback(() => {
    if (putting.current || isClosed) return;
    if (stored.current !== null && sameText(form.getValues(), stored.current)) return;
    stored.current = null;
    keepUnsent(where, { version: version.current, values: form.getValues() });
    changed.current = true;
    if (waits.current) return;
    setState((now) => (now.kind === "saving" ? now : { kind: "typing" }));
    clearTimeout(timer.current);
    timer.current = setTimeout(() => void send(), pauseBeforeSaving);
  }, [form, isClosed, send, where]);

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
    waits.current = false;
    void send();
  }, [send, state]);

  const openTheirs = useCallback(() => {
    forgetUnsent(where);
    changed.current = false;
    location.reload();
  }, [where]);

  const handOver = useCallback(async () => {
    // the version is stale, so the server keeps the text as a draft and changes nothing
    await save({ ...where, version: version.current }, structuredClone(form.getValues()));
    forgetUnsent(where);
    changed.current = false;
  }, [form, save, where]);

  const standsOver = useCallback(() => (inFlight.current || waits.current ? null : version.current), []);

  const standOn = useCallback(
    (next: number, put: () => void, theirs: unknown) => {
      version.current = next;
      waits.current = false;
      putting.current = true;
      try {
        put();
      } finally {
        putting.current = false;
      }
      if (!sameText(form.getValues(), theirs)) {
        stored.current = null;
        noteChange();
        return;
      }
      stored.current = structuredClone(theirs);
      changed.current = false;
      clearTimeout(timer.current);
      forgetUnsent(where);
      setState({ kind: "untouched" });
    },
    [form, noteChange, where],
  );

  const ask = useCallback((stale: Stale) => {
    waits.current = true;
    setState(stale);
  }, []);

  return { state, handOver, standsOver, standOn, ask, saveNow: () => void send(), replaceAll, keepMine, openTheirs };
}
