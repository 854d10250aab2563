import { Scroller } from "../scroller";
import styles from "./chart-frame.module.css";

/** What every chart has: a title, a sentence that says what it shows, the drawing, and the figures behind it. */
export function ChartFrame({
  title,
  summary,
  children,
  table,
}: {
  title: string;
  summary: string;
  children: React.ReactNode;
  table: React.ReactNode;
}) {
  return (
    <figure className={styles.frame}>
      <figcaption>
        <strong className={styles.title}>{title}</strong>
        <span className={styles.summary}>{summary}</span>
      </figcaption>
      <Scroller label={`${title}, drawing`}>
        <div className={styles.plot}>{children}</div>
      </Scroller>
      <details className={styles.data}>
        <summary>
          The figures behind this drawing<span className="visually-hidden">: {title}</span>
        </summary>
        <Scroller label={`${title}, figures`}>{table}</Scroller>
      </details>
    </figure>
  );
}
