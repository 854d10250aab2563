import Link from "next/link";
import type { CompetitionSetting } from "#lib/evaluation";
import { type Competition, howMany, type Standing } from "#lib/requirement";
import { Scroller } from "../../../../../_components/scroller";
import { Status, type StatusWord } from "../../../../../_components/status";
import styles from "./competition.module.css";

/** A range across the limit decides nothing; where there is no figure at all, none is shown. */
function wordOf(standing: Standing | undefined): StatusWord {
  if (standing === undefined) return "not shown";
  switch (standing.kind) {
    case "meets":
      return "meets";
    case "fails":
      return "falls short";
    case "not-known":
      return standing.relaxation === null ? "not shown" : "not decided";
  }
}

/** How each known system stands at each clause, with how many could meet it. */
export function CompetitionTable({
  found,
  setting: { clauses, systems },
  limits,
  addressOf,
}: {
  found: Competition;
  setting: CompetitionSetting;
  /** The limit of each clause in words, by its id. */
  limits: Readonly<Record<string, string>>;
  addressOf: (clause: string) => string;
}) {
  return (
    <Scroller label="Clauses against systems, table">
      <table className={styles.matrix}>
        <caption>How each known system stands at each clause of the text</caption>
        <thead>
          <tr>
            <th scope="col">Clause</th>
            <th scope="col" className="number">
              Could meet it
            </th>
            {systems.map(({ id, label }) => (
              <th key={id} scope="col">
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {clauses.map(({ id, label }, row) => (
            <tr key={id}>
              <th scope="row">
                <Link href={addressOf(id)} prefetch={false}>
                  {label}
                </Link>
                <span className={styles.under}>{limits[id]}</span>
              </th>
              <td className="number">
                {howMany(found.clauses[row]?.meets ?? { fewest: 0, most: 0 })} of {systems.length}
              </td>
              {systems.map((system, column) => (
                <td key={system.id}>
                  <Status word={wordOf(found.matrix[row]?.[column])} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">All clauses together</th>
            <td className="number">
              {howMany(found.together)} of {systems.length}
            </td>
            {systems.map(({ id }) => (
              <td key={id}>{found.couldMeetAll.includes(id) ? "could meet all" : "could not"}</td>
            ))}
          </tr>
        </tfoot>
      </table>
    </Scroller>
  );
}
