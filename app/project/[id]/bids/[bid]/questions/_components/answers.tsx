import { matchProperty, propertyOf } from "#lib/claim";
import type { Answer } from "#lib/crosscheck";
import type { Bid } from "#lib/evaluation";
import styles from "./answers.module.css";
import { fieldLabels } from "./field-labels";

/** What the bidder answered to one question, and what the claims said before. */
export function Answers({ answers, bid }: { answers: readonly Answer[]; bid: Bid }) {
  if (answers.length === 0) return null;
  return (
    <ol className={styles.answers}>
      {answers.map(({ id, answer, received, outcome, amended }) => (
        <li key={id}>
          <p className={styles.outcome}>
            {outcome === "settled" ? "Answered and settled" : "Answered, still open"}
            {received === null ? "" : `, received ${received}`}
          </p>
          <blockquote>{answer}</blockquote>
          {amended.map(({ claim, fields }) => (
            <p key={claim} className={styles.earlier}>
              {labelOf(bid, claim)}, before this answer:{" "}
              {Object.entries(fields)
                .map(([field, text]) => `${fieldLabels[field] ?? field} ${text === "" ? "not given" : `“${text}”`}`)
                .join("; ")}
              .
            </p>
          ))}
        </li>
      ))}
    </ol>
  );
}

function labelOf({ claims }: Bid, id: string): string {
  const claim = claims.find((candidate) => candidate.id === id);
  const property = claim === undefined ? null : matchProperty(claim.property);
  return property === null ? "A claim that was removed" : propertyOf(property).label;
}
