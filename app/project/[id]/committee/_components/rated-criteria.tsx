import { levelsOf } from "#lib/committee";
import type { Criterion } from "#lib/criteria";
import { formatPoints } from "#lib/evaluation";
import styles from "./rated-criteria.module.css";

/** A rated criterion with its levels, each with what has to be so for it. */
export function LevelList({ criterion }: { criterion: Criterion }) {
  return (
    <dl className={styles.levels}>
      {levelsOf(criterion).map(({ id, label, description, value }) => (
        <div key={id}>
          <dt>
            {label} <span className="soft">({formatPoints(value)} of 100)</span>
          </dt>
          <dd>{description}</dd>
        </div>
      ))}
    </dl>
  );
}
