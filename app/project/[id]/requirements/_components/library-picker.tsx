"use client";
import {
  type Addition,
  judgingAlready,
  type LibraryEntry,
  type LibraryHeading,
  library,
  libraryHeadings,
  withEntry,
} from "#lib/criteria";
import { criterionAsTyped } from "./as-typed";
import styles from "./library.module.css";
import { LimitList } from "./limit-list";
import { useTyped } from "./use-typed";

/** All criteria of the library under their headings, each with reason, usual limits, method and what to ask for. */
export function LibraryPicker({ add }: { add: (addition: Addition, said: string) => void }) {
  return (
    <details className={styles.library}>
      <summary>
        <strong>Add from the library</strong> <span className="soft">{library.length} criteria, one at a time</span>
      </summary>
      {(Object.entries(libraryHeadings) as [LibraryHeading, string][]).map(([heading, label]) => (
        <section key={heading} aria-label={`Library: ${label}`}>
          <h3>{label}</h3>
          <ul className={styles.entries}>
            {library
              .filter((entry) => entry.heading === heading)
              .map((entry) => (
                <li key={entry.id}>
                  <Entry entry={entry} add={add} />
                </li>
              ))}
          </ul>
        </section>
      ))}
    </details>
  );
}

function Entry({ entry, add }: { entry: LibraryEntry; add: (addition: Addition, said: string) => void }) {
  const { criteria, headings } = useTyped();
  const { criterion, limits, method, asked, caution } = entry;
  const { label } = criterion;
  const judging = judgingAlready(criteria, entry);
  const addition = withEntry({ criteria, headings }, entry);
  const [added] = addition.added;
  const isWeightless = added?.weight === "0" && criterion.valueFunction.kind !== "none";
  return (
    <details>
      <summary>
        {label}
        {judging === null ? null : (
          <span className="soft">
            {" "}
            {judging.label === label ? "in the list" : `judged already by “${judging.label}”`}
          </span>
        )}
      </summary>
      <div className={styles.entry}>
        <p>{criterion.reason}</p>
        <h4>Usual limits</h4>
        <LimitList limits={limits} />
        <h4>How it is found</h4>
        <p>{method}</p>
        <h4>What to ask for</h4>
        <p>{asked}</p>
        {caution === "" ? null : (
          <p>
            <strong>Note:</strong> {caution}
          </p>
        )}
        <h4>What is added</h4>
        <ul className={styles.limits}>
          {criterionAsTyped(criterion).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
          <li>Where the figures come from: {criterion.source}</li>
          {isWeightless ? (
            <li>It starts without weight, so that nothing you have weighed moves. Give it weight below.</li>
          ) : null}
        </ul>
        <Levels score={criterion.valueFunction} />
        <button type="button" onClick={() => add(addition, `Added “${label}” at the end of the list.`)}>
          Add this criterion<span className="visually-hidden">: {label}</span>
        </button>
      </div>
    </details>
  );
}

/** What a rating starts with: each level with what has to be so for it. Nothing for what is not rated. */
function Levels({ score }: { score: LibraryEntry["criterion"]["valueFunction"] }) {
  if (score.kind !== "rating") return null;
  return (
    <>
      <h4>Levels</h4>
      <ol className={styles.levels}>
        {score.levels.map(({ id, label, description, value }) => (
          <li key={id}>
            <strong>{label}</strong> <span className="soft">worth {value}</span>
            <br />
            {description}
          </li>
        ))}
      </ol>
    </>
  );
}
