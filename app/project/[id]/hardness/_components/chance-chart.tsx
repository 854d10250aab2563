import { scaleLinear } from "d3-scale";
import { area, line } from "d3-shape";
import type { ChanceYear } from "#lib/impact";
import { bidStroke } from "../../../../_components/bid-letter";
import { HorizontalAxis, LimitRule, VerticalAxis } from "../../../../_components/chart/axes";
import { spreadLabels } from "../../../../_components/chart/spread-labels";
import type { ChanceLine } from "./chance-line";
import type { ChartSize } from "./outlook-chart";
import styles from "./outlook-chart.module.css";

const margin = { top: 34, right: 28, bottom: 48, left: 46 };

/** Dashes of its own for each bid, so that colour carries nothing alone. */
const dashes = ["", "9 4", "2 4", "12 4 2 4", "5 3", "14 3"] as const;

/**
 * The chance by year that all test locations stay below the limit, with the level that the owner asks for. A bound of a
 * chance is a line with a band on the side where the chance may lie.
 */
export function ChanceChart({
  label,
  lines,
  level,
  horizon,
  size,
}: {
  label: string;
  lines: readonly ChanceLine[];
  level: number;
  horizon: number;
  size: ChartSize;
}) {
  const right = size.width - margin.right;
  const bottom = size.height - margin.bottom;
  const x = scaleLinear([0, horizon], [margin.left, right]);
  const y = scaleLinear([0, 100], [bottom, margin.top]);
  const chance = line<ChanceYear>(
    (d) => x(d.year),
    (d) => y(d.decisive * 100),
  );
  const open = (from: number) =>
    area<ChanceYear>(
      (d) => x(d.year),
      (d) => y(d.decisive * 100),
      () => y(from),
    );
  const labels = spreadLabels(
    lines.map(({ outlook }) => y((outlook.years.at(-1)?.decisive ?? 0) * 100)),
    18,
    { from: margin.top, to: bottom },
  );
  return (
    <svg viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={label}>
      <VerticalAxis scale={y} from={margin.left} to={right} name="Chance, %" ticks={size.levelTicks} />
      <HorizontalAxis scale={x} y={bottom} name="years in use" ticks={Math.min(horizon, size.yearTicks)} />
      {lines.map(({ letter, index, outlook, stated }, position) => (
        <g key={letter}>
          {stated === null ? null : (
            <path
              d={open(stated === "at-most" ? 100 : 0)(outlook.years) ?? ""}
              fill={bidStroke(index)}
              className={styles.farBand}
            />
          )}
          <path
            d={chance(outlook.years) ?? ""}
            stroke={bidStroke(index)}
            strokeDasharray={dashes[index % dashes.length]}
            className={styles.likely}
          />
          <text x={right + 10} y={labels[position]} dy="0.32em" fill={bidStroke(index)} className={styles.letter}>
            {letter}
          </text>
        </g>
      ))}
      <LimitRule y={y(level * 100)} from={margin.left} to={right} words="chance wanted" side="below" wordsAt="end" />
    </svg>
  );
}
