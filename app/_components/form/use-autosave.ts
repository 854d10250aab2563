"use client";
import { useCallback, useEffect, useRef, useState } from "react";
import type { FieldPath, FieldValues, UseFormReturn } from "react-hook-form";
import type { DocumentAddress, FieldProblem, SaveAction } from "./save-outcome";
import { forgetUnsent, keepUnsent, readUnsent } from "./unsent-text";

/** What the reader is told about the text on the page. */
export type SaveState = Readonly<
  | { kind: "untouched" }
  | { kind: "typing" }
  | { kind: "saving" }
  | { kind: "saved"; at: string }
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

/**
 * Saves a form by itself: one save at a time, never older text over newer, and everything unacknowledged kept in the
 * browser. The version the text was typed over travels with each save, so that a stale one is refused.
 */
export function useAutosave<Values extends FieldValues>(options: {
  form: UseFormReturn<Values>;
  where: DocumentAddress;
  version: number;
  save: SaveAction;
}): Autosave<Values> {
  const { form, save } = options;
  const [where] = useState(options.where);
  const [state, setState] = useState<SaveState>({ kind: "untouched" });
  const version = useRef(options.version);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const inFlight = useRef(false);
  const changed = useRef(false); // since the last text that was sent
  const waitsForPerson = useRef(false); // a conflict is no matter for a timer

  const send = useCallback(async () => {
    clearTimeout(timer.current);
    if (waitsForPerson.current || inFlight.current) return;
    inFlight.current = true;
    changed.current = false;
    setState({ kind: "saving" });
    try {
      const outcome = await save({ ...where, version: version.current }, form.getValues());
      if (outcome.kind === "saved" || outcome.kind === "rejected") {
        form.clearErrors();
        if (!changed.current) forgetUnsent(where);
      }
      switch (outcome.kind) {
        case "saved":
          version.current = outcome.version;
          setState({ kind: "saved", at: outcome.at });
          break;
        case "rejected":
          for (const { field, message } of outcome.problems) {
            form.setError(field as FieldPath<Values>, { type: "server", message });
          }
          setState({ kind: "kept-as-draft", problems: outcome.problems });
          break;
        case "conflict":
          waitsForPerson.current = true;
          setState(outcome);
          break;
        case "gone":
        case "refused":
          setState(outcome);
          break;
      }
    } catch {
      setState({ kind: "unreachable" });
      timer.current = setTimeout(() => void send(), pauseBeforeRetry);
    } finally {
      inFlight.current = false;
    }
    if (changed.current) timer.current = setTimeout(() => void send(), pauseBeforeSaving);
  }, [form, save, where]);

  const noteChange = useCallback(
    (values: unknown) => {
      keepUnsent(where, { version: version.current, values });
      changed.current = true;
      if (!waitsForPerson.current) setState((now) => (now.kind === "saving" ? now : { kind: "typing" }));
      clearTimeout(timer.current);
      timer.current = setTimeout(() => void send(), pauseBeforeSaving);
    },
    [send, where],
  );

  useEffect(() => {
    const watching = form.watch((values) => noteChange(values));
    const unsent = readUnsent(where);
    if (unsent !== null) {
      version.current = unsent.version;
      form.reset(unsent.values as Values);
    }
    const sendWhenHidden = () => {
      if (document.visibilityState === "hidden" && changed.current) void send();
    };
    document.addEventListener("visibilitychange", sendWhenHidden);
    return () => {
      watching.unsubscribe();
      document.removeEventListener("visibilitychange", sendWhenHidden);
      clearTimeout(timer.current);
      if (changed.current) void send();
    };
  }, [form, noteChange, send, where]);

  const replaceAll = useCallback(
    (values: Values) => {
      form.reset(values);
      noteChange(values);
    },
    [form, noteChange],
  );

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
