"use client";
import { useFormContext, useWatch } from "react-hook-form";
import type { BoardPart } from "#lib/document";
import { KindField } from "../../../../../_components/form/kind-field";
import { LongTextField } from "../../../../../_components/form/long-text-field";
import styles from "./words.module.css";

const choices = [
  { value: "generated", label: "The generated text alone" },
  { value: "added", label: "Your words after the generated text" },
  { value: "instead", label: "Your words in place of the generated text" },
];

/** A part for the form; `reading` says how hard the owner's words are to read, and is empty where there are none. */
export type EditedPart = Pick<BoardPart, "part" | "heading" | "lines" | "beside" | "written"> &
  Readonly<{ reading: string }>;

/** One part: what is generated, and the choice to write beside it or in its place. */
export function PartFields({ part: { part, heading, lines, beside, written, reading } }: { part: EditedPart }) {
  const name = `parts.${part}`;
  const own = { words: "", beside };
  return (
    <section aria-labelledby={`part-${part}`} className={styles.part}>
      <h2 id={`part-${part}`}>{heading}</h2>
      <div className={styles.generated}>
        <p className={styles.mark}>Generated from the evaluation</p>
        {lines.length === 0 ? <p className="soft">There is nothing to say here yet.</p> : null}
        {lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
      <KindField
        name={name}
        label={`On paper: ${heading.charAt(0).toLowerCase()}${heading.slice(1)}`}
        choices={choices}
        templates={{ generated: {}, added: own, instead: own }}
        fields={(kind) =>
          kind === "generated" ? null : (
            <>
              <LongTextField
                name={`${name}.words`}
                label="Your words"
                rows={5}
                hint="A new line begins a new paragraph."
              />
              {reading === "" ? null : <p className="soft">As last saved, this {reading}</p>}
              {written.readThen === null ? null : <Moved name={name} beside={beside} readThen={written.readThen} />}
            </>
          )
        }
      />
    </section>
  );
}

/** The generated text reads otherwise than when the words were written; they may or may not still fit. */
function Moved({ name, beside, readThen }: { name: string; beside: string; readThen: string }) {
  const { setValue } = useFormContext();
  const kept: unknown = useWatch({ name: `${name}.beside` });
  if (kept === beside) return null;
  return (
    <div className={styles.moved}>
      <p>
        <strong>The figures have moved since you wrote this.</strong> Read your words again beside the text above. Until
        you say that they still hold, the paper tells its readers.
      </p>
      <details>
        <summary>What the generated text said then</summary>
        {readThen.split("\n").map((line) => (
          <p key={line}>{line}</p>
        ))}
      </details>
      <button type="button" onClick={() => setValue(`${name}.beside`, beside, { shouldDirty: true })}>
        These words still hold
      </button>
    </div>
  );
}
