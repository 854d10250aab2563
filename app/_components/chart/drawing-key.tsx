import styles from "./axes.module.css";

export type Swatch = Readonly<{ x: number; y: number; width: number; height: number }>;

const lineHeight = 22;
const box = { width: 26, height: 14 };

export const keyHeight = (entries: number, columns: number): number => Math.ceil(entries / columns) * lineHeight;

/** Which fill is which, above a drawing that has no room for words beside its parts. */
export function DrawingKey({
  entries,
  columns,
  width,
}: {
  entries: readonly Readonly<{ label: string; swatch: (at: Swatch) => React.ReactNode }>[];
  columns: number;
  width: number;
}) {
  return (
    <g className={styles.key}>
      {entries.map(({ label, swatch }, place) => {
        const x = 1 + (place % columns) * (width / columns);
        const y = 1 + Math.floor(place / columns) * lineHeight;
        return (
          <g key={label}>
            {swatch({ x, y, ...box })}
            <text x={x + box.width + 8} y={y + box.height / 2} dy="0.34em">
              {label}
            </text>
          </g>
        );
      })}
    </g>
  );
}
