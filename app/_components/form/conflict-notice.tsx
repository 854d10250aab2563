"use client";
import styles from "./notice.module.css";
import { VersionTable } from "./version-table";

/** Two people changed one document: shows where they differ and lets this one choose. Neither text is lost. */
export function ConflictNotice({
  conflict,
  mine,
  keepMine,
  openTheirs,
  chooseEach,
}: {
  conflict: { savedBy: string; savedAt: string; theirs: unknown };
  mine: unknown;
  keepMine: () => void;
  openTheirs: () => void;
  /** Leads to the page on which each entry is chosen; absent where there is none. */
  chooseEach?: (() => void) | undefined;
}) {
  return (
    <section className={styles.notice} role="alert" aria-label="Two versions of this page">
      <h2>Two versions of this page</h2>
      <p>
        {conflict.savedBy} saved at {new Date(conflict.savedAt).toLocaleTimeString("en-US")} while you were typing.
        Nothing of yours was saved over it, and your text stands below as you typed it.
      </p>
      <VersionTable mine={mine} theirs={conflict.theirs} theirsTitle="Theirs" />
      <p className="row">
        <button type="button" className="primary" onClick={keepMine}>
          Save mine over theirs
        </button>
        <button type="button" onClick={openTheirs}>
          Open theirs, keep mine as a draft
        </button>
        {chooseEach === undefined ? null : (
          <button type="button" onClick={chooseEach}>
            Choose entry by entry
          </button>
        )}
      </p>
    </section>
  );
}
