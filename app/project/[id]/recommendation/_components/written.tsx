import type { BoardPart } from "#lib/document";
import styles from "./written.module.css";

/** A part of the paper as it stands: the generated text, the owner's words marked as theirs, and whether they may be out of date. */
export function Written({ part: { written }, children }: { part: BoardPart; children: React.ReactNode }) {
  const { showsGenerated, words, readThen } = written;
  return (
    <>
      {showsGenerated ? children : null}
      {words.length === 0 ? null : (
        <div className={styles.own}>
          <p className={styles.mark}>In the owner’s words</p>
          {words.map((paragraph) => (
            <p key={paragraph}>{paragraph}</p>
          ))}
          {readThen === null ? null : (
            <p className={styles.moved}>
              <strong>The figures have moved</strong> since this was written.
            </p>
          )}
        </div>
      )}
    </>
  );
}
