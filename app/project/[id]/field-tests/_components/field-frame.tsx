import type { FieldDrawing } from "../_tests/field-drawing";
import styles from "./field-frame.module.css";

/** The edge of the turf with its scale; what is drawn on it goes inside. */
export function FieldSvg({
  drawing: { width, height, outline, bar },
  label,
  children,
}: {
  drawing: FieldDrawing;
  label: string;
  children: React.ReactNode;
}) {
  const left = (width - bar.length) / 2;
  return (
    <svg viewBox={`0 0 ${width} ${height.toFixed(1)}`} role="img" aria-label={label}>
      <path d={outline} className={styles.turf} />
      {children}
      <path d={outline} className={styles.edge} />
      <g className={styles.bar}>
        <path d={`M${left} ${bar.y - 5}v5h${bar.length}v-5`} />
        <text x={width / 2} y={bar.y + 15} textAnchor="middle">
          {bar.words}
        </text>
      </g>
    </svg>
  );
}
