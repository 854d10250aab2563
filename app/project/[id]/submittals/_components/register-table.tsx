import Link from "next/link";
import type { Requirement } from "#lib/requirement";
import { isLate, type RegisterLine } from "#lib/submittal";
import { Scroller } from "../../../../_components/scroller";
import { statusMarks } from "../../../../_components/status";
import { actionInWords, daysOpen, kindInWords } from "../_register/register-words";
import styles from "./register-table.module.css";

/** The register as it stands on a day: what is late ahead of all else. */
export function RegisterTable({
  project,
  lines,
  requirements,
}: {
  project: string;
  lines: readonly RegisterLine[];
  requirements: readonly Requirement[];
}) {
  const clauseLabel = (id: string) => requirements.find((each) => each.id === id)?.label ?? "a clause no longer here";
  return (
    <Scroller label="Register of submittals">
      <table className={styles.register}>
        <caption className="visually-hidden">Register of submittals</caption>
        <thead>
          <tr>
            <th scope="col">Item</th>
            <th scope="col">Where it stands</th>
            <th scope="col">Due</th>
            <th scope="col">Received</th>
            <th scope="col" className="number">
              Version
            </th>
            <th scope="col">Action</th>
            <th scope="col">Reviewer</th>
            <th scope="col" className="number">
              Days open
            </th>
            <th scope="col">Kind</th>
            <th scope="col">Clause</th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => {
            const { item, version, state, sentence } = line;
            const last = item.versions.at(-1);
            return (
              <tr key={item.id} id={item.id}>
                <th scope="row" className={styles.item}>
                  <Link href={`/project/${project}/submittals/lines/${item.id}`}>{item.item}</Link>
                </th>
                <td className={`${styles.state} ${isLate(line) ? styles.late : ""}`}>
                  {isLate(line) ? (
                    <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" className={styles.mark}>
                      {statusMarks["falls short"]}
                    </svg>
                  ) : null}
                  {sentence}
                </td>
                <td className={styles.date}>{item.due ?? "–"}</td>
                <td className={styles.date}>{last?.received ?? "–"}</td>
                <td className="number">{version === 0 ? "–" : version}</td>
                <td>{actionInWords(line) || "–"}</td>
                <td>{last?.reviewer || "–"}</td>
                <td className="number">{daysOpen(state) ?? "–"}</td>
                <td>{kindInWords(item.kind)}</td>
                <td>{item.clauses.map(clauseLabel).join(", ") || "–"}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </Scroller>
  );
}
