import type { CriterionScore } from "#lib/criteria";
import { consequenceInWords } from "#lib/evaluation";
import { explainShortfall } from "#lib/figure";
import styles from "./tables.module.css";

/** Why a figure does not count in full, and what becomes of it. What sets two methods apart takes several lines, so it opens on demand. */
export function Reason({ score, of }: { score: CriterionScore; of: string }) {
  const { because } = score;
  if (because === null) return null;
  const consequence = consequenceInWords(score);
  if (because.kind !== "not-comparable")
    return (
      <span className={styles.reason}>
        {explainShortfall(because)} {consequence}
      </span>
    );
  return (
    <>
      <span className={styles.reason}>
        Given by {because.got}, asked for by {because.wanted}. {consequence}
      </span>
      <details className={styles.reason}>
        <summary>
          Why it does not count<span className="visually-hidden">: {of}</span>
        </summary>
        {explainShortfall(because)}
      </details>
    </>
  );
}
