"use client";
import Link from "next/link";
import { useEffect, useRef } from "react";
import { get, useFormContext, useWatch } from "react-hook-form";
import { counted } from "../../../../../_components/in-words";
import { gateAsTyped } from "../../../requirements/_components/criterion-kinds";
import { ClauseFields } from "./clause-fields";
import type { ClausesValues } from "./clause-values";
import styles from "./clauses.module.css";
import { FromCriterion } from "./from-criterion";
import { OwnClauseFields } from "./own-clause-fields";

/** One clause: a line that sums it up, its fields behind that line, and how it reads in the text. */
export function ClauseEntry({
  index,
  project,
  isNew,
  preview,
  notes,
  remove,
}: {
  index: number;
  project: string;
  isNew: boolean;
  preview: React.ReactNode;
  notes: readonly string[];
  remove: () => void;
}) {
  const { control, formState } = useFormContext<ClausesValues>();
  const clause = useWatch({ control, name: `clauses.${index}` });
  const criteria = useWatch({ control, name: "criteria" });
  const details = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    if (!isNew || details.current === null) return;
    details.current.open = true;
    details.current.querySelector<HTMLElement>(`[name$=".label"]`)?.focus();
  }, [isNew]);
  if (clause === undefined) return null; // for a moment, while it is removed
  const criterion = criteria.find(({ id }) => id === clause.criterion);
  const name = criterion?.label ?? nameOf(clause);
  const limit = gateAsTyped((criterion?.gate ?? clause.limit) as Parameters<typeof gateAsTyped>[0]);
  const isTroubled = get(formState.errors, `clauses.${index}`) !== undefined;
  return (
    <li id={`clauses.${index}`} className={styles.clause}>
      <details ref={details}>
        <summary>
          <strong>{name}</strong>{" "}
          <span className={styles.sum}>{sumOf(limit, clause, criterion !== undefined, notes.length)}</span>
          {isTroubled ? <span className={styles.problem}> something here can’t be read yet</span> : null}
        </summary>
        {notes.length === 0 ? null : (
          <ul className={styles.notes}>
            {notes.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
        )}
        {criterion === undefined ? (
          <OwnClauseFields index={index} />
        ) : (
          <FromCriterion project={project} criterion={criterion} />
        )}
        <ClauseFields index={index} measure={criterion?.measure ?? clause.measure ?? ""} />
        {preview === null ? null : (
          <div className={styles.preview}>
            <p className={styles.previewHead}>As it reads in the text, as last saved</p>
            {preview}
          </div>
        )}
      </details>
      {criterion === undefined ? (
        <button type="button" className="plain screen-only" onClick={remove}>
          Remove<span className="visually-hidden"> {name}</span>
        </button>
      ) : (
        <Link className={`${styles.toCriterion} screen-only`} href={`/project/${project}/requirements#${criterion.id}`}>
          Criterion<span className="visually-hidden"> {name}, under Requirements</span>
        </Link>
      )}
    </li>
  );
}

/** A clause may have outlived the criterion that it stood beside. */
const nameOf = ({ label = "", criterion }: ClausesValues["clauses"][number]): string => {
  if (label !== "") return label;
  return criterion === "" ? "Clause without a name" : "Clause of a criterion that is gone";
};

/** “below 165 g; 2 notes”, “not in the text” */
function sumOf(
  limit: string,
  { isOn, asked }: ClausesValues["clauses"][number],
  isCriterion: boolean,
  notes: number,
): string {
  if (!isOn) return "not in the text";
  const said =
    limit !== "" ? limit : asked !== "" ? "asked in words" : isCriterion ? "scores only" : "asks nothing yet";
  return [said, notes === 0 ? "" : counted(notes, "note", "notes")].filter((part) => part !== "").join("; ");
}
