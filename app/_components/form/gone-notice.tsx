import styles from "./notice.module.css";

/** Says that somebody removed what is being typed here, and where the text is. */
export const GoneNotice = ({ by }: { by: string }) => (
  <section className={styles.notice} role="alert" aria-label="Removed meanwhile">
    <h2>{by} removed this meanwhile</h2>
    <p>
      What you typed stands below and is kept as your draft. It does not count unless this is restored, from the record
      or from the list it was removed from; then it is brought together with what stands there.
    </p>
  </section>
);
