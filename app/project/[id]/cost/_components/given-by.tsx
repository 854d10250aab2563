import type { GivenBy } from "#lib/cost";
import styles from "./given-by.module.css";

/** Who stands behind a figure. The owner's estimates carry a dashed rule here as in the drawing. */
export function GivenByMark({ by }: { by: GivenBy }) {
  return by === "bid" ? <span>the bid</span> : <span className={styles.estimate}>owner’s estimate</span>;
}
