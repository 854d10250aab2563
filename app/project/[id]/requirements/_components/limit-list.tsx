import { limitStandings, type UsualLimit } from "#lib/criteria";
import styles from "./library.module.css";

/** Usual limits, each with its source and how well that is founded. */
export const LimitList = ({ limits }: { limits: readonly UsualLimit[] }) => (
  <ul className={styles.limits}>
    {limits.map(({ says, source, standing }) => (
      <li key={says}>
        {says}{" "}
        <span className="soft">
          {source === "" ? "" : `${source}; `}
          {limitStandings[standing]}.
        </span>
      </li>
    ))}
  </ul>
);
