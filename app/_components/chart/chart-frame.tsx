import { Scroller } from "../scroller";
import styles from "./chart-frame.module.css";
import type { DrawingWidth } from "./drawing-width";

/**
 * What every chart has: a title, a sentence that says what it shows, the drawing, and the figures behind it.
 * The drawing is made twice, and the page shows the one that fits. What is hidden paints no pattern for the other, so
 * ids inside a drawing have to name its width.
 * @param breadth broad where the wide drawing has more beside each other than usual
 */
export function ChartFrame({
  title,
  summary,
  draw,
  table,
  breadth = "usual",
}: {
  title: string;
  summary: string;
  draw: (width: DrawingWidth) => React.ReactNode;
  table: React.ReactNode;
  breadth?: "usual" | "broad";
}) {
  return (
    <figure className={styles.frame}>
      <figcaption>
        <strong className={styles.title}>{title}</strong>
        <span className={styles.summary}>{summary}</span>
      </figcaption>
      <div className={`${styles.plot} ${styles[breadth]}`}>
        <div className={styles.wide}>{draw("wide")}</div>
        <div className={styles.narrow}>{draw("narrow")}</div>
      </div>
      <details className={styles.data}>
        <summary>
          The figures behind this drawing<span className="visually-hidden">: {title}</span>
        </summary>
        <Scroller label={`${title}, figures`}>{table}</Scroller>
      </details>
    </figure>
  );
}
