import Link from "next/link";
import type { CompletenessNote } from "#lib/requirement";
import type { Addresses } from "../_drafted/addresses";
import styles from "./notes.module.css";

/** The field of a clause that each kind of note is about. */
const fieldOf: Readonly<Record<string, string>> = {
  "limit-without-method": "method",
  "method-without-edition": "edition",
  "no-tolerance": "holdsAt",
  "no-acceptance-test": "acceptance",
  "no-remedy": "remedy",
};

const addressOf = (note: CompletenessNote, addresses: Addresses, project: string): string => {
  const [requirement] = note.requirements;
  if (note.rule === "criterion-not-announced")
    return `/project/${project}/specification/section#choices.evaluation-appendix`;
  if (note.submittal !== undefined) return addresses.submittal(note.submittal);
  return addresses.clause(requirement ?? "", fieldOf[note.rule]);
};

/** What the text leaves out or says twice, by kind, each with the way to the field that mends it. */
export function CompletenessList({
  project,
  notes,
  addresses,
}: {
  project: string;
  notes: readonly CompletenessNote[];
  addresses: Addresses;
}) {
  const kinds = [...new Map(notes.map(({ rule, title, advice }) => [rule, { rule, title, advice }])).values()];
  return (
    <ul className={styles.kinds}>
      {kinds.map(({ rule, title, advice }) => (
        <li key={rule}>
          <p>
            <strong>{title}.</strong> {advice}
          </p>
          <ul>
            {notes
              .filter((note) => note.rule === rule)
              .map((note) => (
                <li key={note.sentence}>
                  {note.sentence}{" "}
                  <Link className="screen-only" href={addressOf(note, addresses, project)} prefetch={false}>
                    Mend it<span className="visually-hidden">: {note.sentence}</span>
                  </Link>
                </li>
              ))}
          </ul>
        </li>
      ))}
    </ul>
  );
}
