import { explainShortfall, type Figure, formatFigure } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import styles from "./figure-text.module.css";
import { ShowWorking } from "./working";

/** A derived figure as a reader sees it: value and unit, or why there is none; the working one step away. */
export function FigureText({
  project,
  of,
  figure,
  units,
}: {
  project: string;
  of: string;
  figure: Figure;
  units: UnitSystem;
}) {
  if (figure.kind === "unknown") {
    return (
      <div className={styles.figure}>
        <span className={styles.unknown}>not known</span>
        <p className={styles.reason}>{explainShortfall(figure.because)}</p>
      </div>
    );
  }
  return (
    <div className={styles.figure}>
      <span className={styles.value}>{formatFigure(figure, units)}</span>
      <ShowWorking project={project} of={of} working={figure.working} />
    </div>
  );
}
