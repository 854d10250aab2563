import { scaleLinear } from "d3-scale";
import { area, line } from "d3-shape";
import type { HardnessOutlook, ImpactRequirement, OutlookYear } from "#lib/impact";
import { formatValue } from "#lib/quantity";
import { bidDash, bidStroke } from "../../../../_components/bid-letter";
import { HorizontalAxis, LimitRule, VerticalAxis } from "../../../../_components/chart/axes";
import { spreadLabels } from "../../../../_components/chart/spread-labels";
import styles from "./outlook-chart.module.css";

/** A bid whose level can be followed over the years. */
export type OutlookLine = Readonly<{
  letter: string;
  index: number;
  outlook: Extract<HardnessOutlook, { kind: "outlook" }>;
  /** What the bid itself states, by age. */
  stated: readonly Readonly<{ years: number; level: number }>[];
}>;

const width = 760;
const height = 420;
const margin = { top: 34, right: 48, bottom: 48, left: 52 };

/** Levels that the drawing has room for; anything beyond is cut at the edge and stands in the table. */
function levelDomain(lines: readonly OutlookLine[], { limit, targetWindow }: ImpactRequirement): [number, number] {
  const levels = lines
    .flatMap(({ outlook }) => outlook.years.flatMap(({ low, high }) => [low, high]))
    .filter(Number.isFinite);
  const least = Math.min(targetWindow.low.value, ...levels);
  const greatest = Math.max(limit.value, ...levels);
  return [
    Math.max(0, Math.floor((least - 10) / 20) * 20),
    Math.ceil(Math.min(greatest + 10, limit.value * 1.8) / 20) * 20,
  ];
}

/** Impact level of every bid by year: the likely line, its range as a band, the owner's window and limit. */
export function OutlookChart({
  lines,
  requirement,
}: {
  lines: readonly OutlookLine[];
  requirement: ImpactRequirement;
}) {
  const { limit, targetWindow, horizonYears } = requirement;
  const [lowest, highest] = levelDomain(lines, requirement);
  const x = scaleLinear([0, horizonYears], [margin.left, width - margin.right]);
  const y = scaleLinear([lowest, highest], [height - margin.bottom, margin.top]).clamp(true);
  const right = width - margin.right;
  const band = area<OutlookYear>(
    (d) => x(d.year),
    (d) => y(d.low),
    (d) => y(d.high),
  );
  const likely = line<OutlookYear>(
    (d) => x(d.year),
    (d) => y(d.likely),
  );
  const labels = spreadLabels(
    lines.map(({ outlook }) => y(outlook.years.at(-1)?.likely ?? lowest)),
    18,
    { from: margin.top, to: height - margin.bottom },
  );
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label="Impact level of each bid by year, as summed up above and listed in the table below"
    >
      <rect
        className={styles.window}
        x={margin.left}
        width={right - margin.left}
        y={y(targetWindow.high.value)}
        height={y(targetWindow.low.value) - y(targetWindow.high.value)}
      />
      <text className={styles.windowWords} x={margin.left + 6} y={y(targetWindow.low.value) - 6}>
        target window
      </text>
      <VerticalAxis scale={y} from={margin.left} to={right} name="Impact level, g" />
      <HorizontalAxis scale={x} y={height - margin.bottom} name="years in use" ticks={Math.min(horizonYears, 10)} />
      {lines.map(({ letter, index, outlook }) => (
        <path key={letter} d={band(outlook.years) ?? ""} fill={bidStroke(index)} className={styles.band} />
      ))}
      {lines.map(({ letter, index, outlook }) => (
        <g key={letter} stroke={bidStroke(index)} strokeDasharray={bidDash(index)}>
          <path d={likely(outlook.years) ?? ""} className={styles.extrapolated} />
          <path d={likely(outlook.years.filter(({ extrapolated }) => !extrapolated)) ?? ""} className={styles.likely} />
        </g>
      ))}
      {lines.flatMap(({ letter, index, stated }) =>
        stated.map(({ years, level }) => (
          <circle
            key={`${letter} ${years} ${level}`}
            cx={x(years)}
            cy={y(level)}
            r="4.5"
            stroke={bidStroke(index)}
            className={styles.stated}
          />
        )),
      )}
      <LimitRule
        y={y(limit.value)}
        from={margin.left}
        to={right}
        words={`limit ${formatValue("impactLevel", limit.value, "us")}`}
      />
      {lines.map(({ letter, index }, position) => (
        <text
          key={letter}
          x={right + 10}
          y={labels[position]}
          dy="0.32em"
          fill={bidStroke(index)}
          className={styles.letter}
        >
          {letter}
        </text>
      ))}
    </svg>
  );
}
