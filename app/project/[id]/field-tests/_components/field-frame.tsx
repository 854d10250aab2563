import type { FieldDrawing } from "../_tests/field-drawing";
import styles from "./field-frame.module.css";

/** The edge of the turf with its scale; what is drawn on it goes inside, a key above it. */
export function FieldSvg({
  drawing: { width, height, outline, bar },
  label,
  drawnKey,
  children,
}: {
  drawing: FieldDrawing;
  label: string;
  drawnKey?: Readonly<{ height: number; drawn: React.ReactNode }>;
  children: React.ReactNode;
}) {
  const left = (width - bar.length) / 2;
  const above = drawnKey?.height ?? 0;
  return (
    <svg viewBox={`0 0 ${width} ${(height + above).toFixed(1)}`} role="img" aria-label={label}>
      {drawnKey?.drawn}
      <g transform={`translate(0 ${above})`}>
        <path d={outline} className={styles.turf} />
        {children}
        <path d={outline} className={styles.edge} />
        <g className={styles.bar}>
          <path d={`M${left} ${bar.y - 5}v5h${bar.length}v-5`} />
          <text x={width / 2} y={bar.y + 15} textAnchor="middle">
            {bar.words}
          </text>
        </g>
      </g>
    </svg>
  );
}
