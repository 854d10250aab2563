import Link from "next/link";
import type { CompletenessNote, CompletenessTopic } from "#lib/procedure";
import { capitalised } from "../../../../_components/in-words";
import { Scroller } from "../../../../_components/scroller";
import styles from "./completeness-table.module.css";

/** Where each topic is written. */
const places: Readonly<Record<CompletenessTopic, string>> = {
  criteria: "requirements#requirements-criteria",
  limits: "requirements#requirements-criteria",
  methods: "requirements#requirements-impact",
  evidence: "requirements#requirements-criteria",
  weights: "requirements#requirements-weights",
  "impact requirement": "requirements#requirements-impact",
  "cost conventions": "brief#brief-money",
  ratings: "procedure/people",
};

const marks: Readonly<Record<CompletenessNote["verdict"], React.ReactNode>> = {
  complete: <path d="M2 8.5 6 12.5 14 3.5" fill="none" stroke="currentColor" strokeWidth="2" />,
  "look at": <path d="M8 3v6M8 11.5v2" fill="none" stroke="currentColor" strokeWidth="2.5" />,
  missing: (
    <rect
      x="3"
      y="3"
      width="10"
      height="10"
      fill="none"
      stroke="currentColor"
      strokeDasharray="2.5 2"
      strokeWidth="1.5"
    />
  ),
};

/** What the completeness check says, topic by topic, with the way to where it is written. */
export function CompletenessTable({ project, notes }: { project: string; notes: readonly CompletenessNote[] }) {
  return (
    <Scroller label="Completeness check">
      <table className={styles.notes}>
        <caption className="visually-hidden">Completeness check</caption>
        <thead>
          <tr>
            <th scope="col">Topic</th>
            <th scope="col">Verdict</th>
            <th scope="col">What is so</th>
          </tr>
        </thead>
        <tbody>
          {notes.map(({ topic, verdict, sentence }) => (
            <tr key={topic}>
              <th scope="row">
                <Link href={`/project/${project}/${places[topic]}`} prefetch={false}>
                  {capitalised(topic)}
                </Link>
              </th>
              <td className={verdict === "missing" ? styles.trouble : undefined}>
                <span className={styles.verdict}>
                  <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
                    {marks[verdict]}
                  </svg>
                  {verdict}
                </span>
              </td>
              <td>{sentence}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
