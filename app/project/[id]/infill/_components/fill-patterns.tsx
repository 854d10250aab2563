import type { MaterialClass } from "#lib/material";
import styles from "./fill-patterns.module.css";

/** What a band is filled with: one class of material, a mix of several, or a shock layer. */
export type Fill = MaterialClass | "shock-layer";

/** The fill of a band by what its grains are made of; several classes, or a blend, look mixed. */
export const fillOf = (classes: readonly MaterialClass[]): Fill => {
  const [first] = classes;
  return classes.length === 1 && first !== undefined ? first : classes.length === 0 ? "shock-layer" : "blend";
};

const baseFill = (fill: Fill): string => `var(--fill-${fill})`;

const marks: Readonly<Record<Fill, React.ReactNode>> = {
  mineral: (
    <g className={styles.onLight}>
      <circle cx="2" cy="2" r="1" />
      <circle cx="8" cy="4.5" r="1.2" />
      <circle cx="4.5" cy="8" r="0.9" />
      <circle cx="10.5" cy="10" r="1" />
    </g>
  ),
  polymer: (
    <g className={styles.onDark}>
      <path d="M1 2l3-1 1.5 2.2-2.6 1.6zM8 1.5l2.6.8-.6 2.8-2.4-.8zM2.5 8l2.2-.8 1.8 1.6-1.6 2.2-2-.6zM8.8 7.6l2 1.2-1 2.2-2.2-1.4z" />
    </g>
  ),
  organic: (
    <g className={styles.flakes}>
      <path d="M0.5 3c2-1.6 3.4-1.6 5 0-1.6 1.2-3.2 1.2-5 0zM6 9c2-1.6 3.6-1.4 5.4.2-1.8 1.2-3.6 1-5.4-.2zM7 2.5l3.5 1.6M1.5 9.5l2.6-1.4" />
    </g>
  ),
  blend: (
    <>
      <path
        className={styles.crumb}
        d="M1 2l3-1 1.5 2.2-2.6 1.6zM2.5 8.4l2.2-.8 1.8 1.6-1.6 2-2-.6zM8.8 7l2 1.2-1 2.2-2.2-1.4z"
      />
      <g className={styles.grain}>
        <circle cx="8.4" cy="2.6" r="1.5" />
        <circle cx="6.4" cy="5.8" r="1.2" />
        <circle cx="10.6" cy="5" r="1" />
        <circle cx="1.4" cy="6.4" r="1.2" />
      </g>
    </>
  ),
  "shock-layer": <path className={styles.cells} d="M0 3h12M0 9h12M3 0v3M9 3v6M3 9v3" />,
};

const fills = Object.keys(marks) as readonly Fill[];

/** One pattern per fill. `id` keeps the drawings of one page apart. */
export function FillPatterns({ id }: { id: string }) {
  return (
    <defs>
      {fills.map((fill) => (
        <pattern key={fill} id={`${id}-${fill}`} width="12" height="12" patternUnits="userSpaceOnUse">
          {marks[fill]}
        </pattern>
      ))}
    </defs>
  );
}

/** A rectangle of some fill: its colour, its pattern over it, and an outline, so that it also tells apart in grey. */
export function FilledBand({
  id,
  fill,
  ...box
}: {
  id: string;
  fill: Fill;
  x: number;
  y: number;
  width: number;
  height: number;
}) {
  return (
    <>
      <rect {...box} fill={baseFill(fill)} />
      <rect {...box} fill={`url(#${id}-${fill})`} className={styles.outline} />
    </>
  );
}
