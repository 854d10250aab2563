import styles from "./page-head.module.css";

/** The head of every page of a project: its place in the contents, its name, and what the reader can decide from it. */
export function PageHead({ number, title, decide }: { number?: number; title: string; decide: string }) {
  return (
    <header className={styles.head}>
      {number === undefined ? null : <p className={styles.number}>{number}</p>}
      <h1>{title}</h1>
      <p className="lede">{decide}</p>
    </header>
  );
}
