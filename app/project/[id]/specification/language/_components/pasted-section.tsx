"use client";
import { useDeferredValue, useId, useMemo, useState } from "react";
import { readLanguage } from "#lib/requirement";
import { counted } from "../../../../../_components/in-words";
import { LanguageList } from "../../_components/language-list";

/** Longest text that is read in one go. */
const mostCharacters = 500_000;

/** A text from elsewhere, read in the browser as it is pasted. It is neither stored nor sent. */
export function PastedSection({ names }: { names: readonly string[] }) {
  const id = useId();
  const [text, setText] = useState("");
  const looked = useDeferredValue(text).slice(0, mostCharacters);
  const { notes, sentences } = useMemo(() => readLanguage(looked, names), [looked, names]);
  return (
    <>
      <label htmlFor={id}>The text</label>
      <textarea
        id={id}
        rows={10}
        className="wide"
        value={text}
        onChange={({ target }) => setText(target.value)}
        aria-describedby={`${id}-hint`}
      />
      <p id={`${id}-hint`} className="small soft">
        It is read in this browser, and neither stored nor sent. Up to {mostCharacters.toLocaleString("en-US")}{" "}
        characters.
      </p>
      <p role="status">{summary(looked, sentences, notes.length, text.length > mostCharacters)}</p>
      <LanguageList
        notes={notes.map((note) => ({
          key: `${note.rule} ${note.start}`,
          note,
          sentence: looked.slice(note.sentence.start, note.sentence.end),
        }))}
      />
    </>
  );
}

function summary(text: string, sentences: number, notes: number, isCut: boolean): string {
  if (text.trim() === "") return "Nothing is pasted yet.";
  const read = `${counted(sentences, "sentence", "sentences")} read, ${notes === 0 ? "no note" : counted(notes, "note", "notes")}.`;
  return isCut ? `${read} The text is longer; its end was not read.` : read;
}
