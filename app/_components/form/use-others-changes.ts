"use client";
import { useRouter } from "next/navigation";
import { type RefObject, useCallback, useEffect, useRef, useState } from "react";
import type { FieldValues, Path, UseFormReturn } from "react-hook-form";
import { isQuietKind, pathIn } from "#lib/together";
import { caretIn, putCaret } from "./caret";
import type { ChangedMarks } from "./changed-marks";
import { pathInWords } from "./differences";
import { discardDraft } from "./discard-draft";
import { type News, showOpen } from "./open-documents";
import type { DocumentAddress } from "./save-outcome";
import { takenIn, touches } from "./taking-in";
import type { UnsentText } from "./unsent-text";
import type { Autosave, Stale } from "./use-autosave";

const marksStay = 60_000; // ms

/** What a form calls a field; its path in words where it has no control of its own, as a list has none. */
function labelIn(form: HTMLFormElement | null, path: string): string {
  const control = form?.elements.namedItem(path);
  const label = control instanceof HTMLElement && "labels" in control ? (control.labels as NodeList)[0] : undefined;
  return label?.textContent || pathInWords(path);
}

/**
 * Takes what other people saved into an open form: fields that were not touched here get their text and are marked, those
 * that were changed here stay. Where a save came too late, both texts are brought together over the newer version; only
 * where both changed the same is somebody asked. The server's part of the page, fetched anew, brings the others' text in
 * the form's own shape.
 */
export function useOthersChanges<Values extends FieldValues>(options: {
  form: UseFormReturn<Values>;
  element: RefObject<HTMLFormElement | null>;
  where: DocumentAddress;
  version: number;
  values: Values;
}) {
  const { form, element } = options;
  const [where] = useState(options.where);
  const router = useRouter();
  const latest = useRef({ version: options.version, values: options.values });
  const known = useRef(latest.current); // the document as it was last heard of, and what this text goes back to
  const stale = useRef<Readonly<{ is: Stale; over: number }> | null>(null);
  const leftDraft = useRef<number | null>(null); // the version under a draft that stands no longer for anything
  const waitsForField = useRef(false);
  const heard = useRef<News | null>(null);
  const autosave = useRef<Autosave<Values> | null>(null);
  const [marks, setMarks] = useState<ChangedMarks | null>(null);
  const [removedBy, setRemovedBy] = useState<string | null>(null);

  useEffect(() => {
    if (isQuietKind(where.kind)) return undefined;
    return showOpen({
      kind: where.kind,
      id: where.id,
      heard: (news) => {
        heard.current = news;
        setRemovedBy(news.stands ? null : news.by);
        return news.stands && news.version > latest.current.version;
      },
    });
  }, [where]);

  useEffect(() => {
    if (marks === null) return undefined;
    const timer = setTimeout(() => setMarks(null), marksStay);
    return () => clearTimeout(timer);
  }, [marks]);

  const onSaved = useCallback(
    (saved: UnsentText) => {
      if (saved.version > known.current.version) {
        known.current = { version: saved.version, values: saved.values as Values };
        const over = leftDraft.current;
        leftDraft.current = null;
        if (over !== null) void discardDraft({ ...where, version: over });
      }
      router.refresh();
    },
    [router, where],
  );

  const onStale = useCallback(
    (is: Stale, over: number) => {
      stale.current = { is, over };
      leftDraft.current = over;
      router.refresh();
      return true;
    },
    [router],
  );

  const takeIn = useCallback(() => {
    const saving = autosave.current;
    if (saving === null) return;
    const { version: next, values: theirs } = latest.current;
    const late = stale.current;
    const over = late?.over ?? known.current.version;
    const isNews = late === null ? saving.standsOver() === over && next > over : next >= late.is.version;
    if (!isNews) return;
    const mine = structuredClone(form.getValues());
    const base = late !== null && late.over !== known.current.version ? late.is.base : known.current.values;
    const taken = takenIn(base, mine, theirs);
    const caret = caretIn(element.current);
    if (late === null && caret !== null && touches(taken.puts, caret.field)) {
      waitsForField.current = true;
      return;
    }
    const put = () => {
      for (const { path, value } of taken.puts) form.setValue(path as Path<Values>, value as never);
    };
    stale.current = null;
    if (taken.isClear) {
      known.current = { version: next, values: theirs };
      saving.standOn(next, put, theirs);
    } else {
      known.current = { version: over, values: taken.known };
      if (late !== null || taken.puts.length > 0) saving.standOn(over, put, null);
      if (late !== null) saving.ask({ ...late.is, version: next, theirs });
    }
    const field = caret && pathIn(caret.field, mine, taken.joined);
    if (caret !== null && field !== null && taken.puts.length > 0)
      requestAnimationFrame(() => putCaret(element.current, { ...caret, field }));
    if (taken.puts.length > 0) {
      const last = heard.current;
      const by = late?.is.savedBy ?? (last !== null && last.version >= next ? last.by : "Somebody else");
      const paths = taken.puts.map(({ path }) => path);
      setMarks({ by, paths, names: paths.map((path) => labelIn(element.current, path)) });
    }
  }, [element, form]);

  /** To be called when somebody leaves a field: what waited for that is taken in, once the focus has gone on. */
  const leftField = useCallback(() => {
    if (!waitsForField.current) return;
    waitsForField.current = false;
    setTimeout(takeIn, 0);
  }, [takeIn]);

  /** To be called after each drawing: follows the page, as it is fetched anew, and the saving. */
  const follow = useCallback(
    (saving: Autosave<Values>, page: Readonly<{ version: number; values: Values }>) => {
      autosave.current = saving;
      latest.current = page;
      takeIn();
    },
    [takeIn],
  );

  /** Asks with what the save answered, where the page does not come. */
  const giveUpWaiting = useCallback(() => {
    const late = stale.current;
    stale.current = null;
    if (late !== null) autosave.current?.ask(late.is);
  }, []);

  return { marks, removedBy, onSaved, onStale, leftField, follow, giveUpWaiting };
}
