import type { Shortfall } from "#lib/figure";
import { explainShortfall } from "#lib/figure";
import styles from "./tables.module.css";

/** Why a figure does not count. What sets two methods apart takes several lines, so it opens on demand. */
export function Reason({ because, of }: { because: Shortfall; of: string }) {
  if (because.kind !== "not-comparable") return <span className={styles.reason}>{explainShortfall(because)}</span>;
  return (
    <>
      <span className={styles.reason}>
        Given by {because.got}, asked for by {because.wanted}.
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
