import Link from "next/link";
import {
  amendmentInWords,
  changeInWords,
  freezingStep,
  type Procedure,
  stageInWords,
  toldByFile,
} from "#lib/procedure";
import styles from "./procedure-line.module.css";

/** What every later page says once criteria are frozen: since when, at which stage, and what was amended with which reason. */
export function ProcedureLine({
  project,
  procedure,
  keptSince,
}: {
  project: string;
  procedure: Procedure;
  /** When the record of the project begins. */
  keptSince: string;
}) {
  if (freezingStep(procedure) === null) return null;
  return (
    <aside className={styles.line} aria-label="Stage and amendments">
      <p>
        {stageInWords(procedure)} {toldByFile(procedure, keptSince)}{" "}
        <Link href={`/project/${project}/procedure`} className="screen-only" prefetch={false}>
          Procedure
        </Link>
      </p>
      {procedure.amendments.map((amendment, index) => (
        <details key={amendment.at} className="printed-open">
          <summary>{amendmentInWords(amendment, index)}</summary>
          <ul>
            {amendment.changes.map((change) => (
              <li key={change.field}>{changeInWords(change)}</li>
            ))}
          </ul>
        </details>
      ))}
    </aside>
  );
}
