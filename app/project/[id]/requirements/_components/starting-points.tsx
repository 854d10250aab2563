"use client";
import styles from "./library.module.css";
import { LibraryPicker } from "./library-picker";
import { ProfilePicker } from "./profile-picker";
import { useStartingPoints } from "./use-starting-points";
import { useTyped } from "./use-typed";

/** Ways to come to criteria without writing each: a profile for a kind of use, or the library one by one. */
export function StartingPoints() {
  const { criteria } = useTyped();
  const { add, notice } = useStartingPoints();
  return (
    <div className="screen-only">
      {criteria.length === 0 ? (
        <ProfilePicker add={add} />
      ) : (
        <details className={styles.library}>
          <summary>
            <strong>Start from a profile</strong>{" "}
            <span className="soft">a full set for one kind of use, or what of it is missing here</span>
          </summary>
          <ProfilePicker add={add} />
        </details>
      )}
      <LibraryPicker add={add} />
      {notice}
    </div>
  );
}
