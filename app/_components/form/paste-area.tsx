"use client";
import { useEffect, useId, useRef } from "react";
import styles from "./paste-area.module.css";

/** What became of a pasted block: nothing is there, it can't be read at all, or it was read and may be taken over. */
export type PasteOutcome = Readonly<
  | { kind: "nothing" }
  | { kind: "not-read"; message: string }
  | { kind: "read"; summary: string; rows: number; takeOver: string; preview: React.ReactNode }
>;

/** A place to paste a block from a spreadsheet, shown as it was read before anything of it goes into the form. */
export function PasteArea({
  title,
  explain,
  label,
  pasted,
  setPasted,
  outcome,
  take,
  children,
}: {
  title: string;
  explain: string;
  label: string;
  pasted: string;
  setPasted: (text: string) => void;
  outcome: PasteOutcome;
  take: () => void;
  /** Choices that the reading depends on. */
  children?: React.ReactNode;
}) {
  const id = useId();
  const area = useRef<HTMLTextAreaElement>(null);
  // a block that was pasted into the table shows up here, out of sight of where it was pasted
  useEffect(() => {
    if (pasted !== "" && document.activeElement !== area.current) area.current?.focus();
  }, [pasted]);
  return (
    <details className={`${styles.paste} screen-only`} open={pasted !== "" || undefined}>
      <summary>{title}</summary>
      <p>{explain}</p>
      {children}
      <label htmlFor={id}>{label}</label>
      <textarea
        id={id}
        ref={area}
        rows={4}
        value={pasted}
        spellCheck={false}
        onChange={({ target }) => setPasted(target.value)}
      />
      {outcome.kind === "not-read" ? (
        <p role="alert" className={styles.trouble}>
          {outcome.message}
        </p>
      ) : null}
      {outcome.kind === "read" ? (
        <>
          <p role="status">{outcome.summary}</p>
          {outcome.preview}
          <p className="row">
            <button
              type="button"
              className="primary"
              aria-disabled={outcome.rows === 0}
              onClick={() => {
                if (outcome.rows === 0) return;
                take();
                setPasted("");
              }}
            >
              {outcome.takeOver}
            </button>
            <button type="button" onClick={() => setPasted("")}>
              Leave them out
            </button>
          </p>
        </>
      ) : null}
    </details>
  );
}

/** What is the matter with a pasted cell, below its text. */
export const CellProblems = ({ messages }: { messages: readonly string[] }) =>
  messages.map((message) => (
    <span key={message} className={styles.trouble}>
      {message}
    </span>
  ));
