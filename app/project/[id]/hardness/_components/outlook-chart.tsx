import { scaleLinear } from "d3-scale";
import {
  area,
  line,
  symbol,
  symbolCircle,
  symbolDiamond,
  symbolSquare,
  symbolStar,
  symbolTriangle,
  symbolWye,
} from "d3-shape";
import type { ImpactRequirement, LevelSpan, OutlookYear } from "#lib/impact";
import { formatValue, type Interval, type UnitSystem, unitFor } from "#lib/quantity";
import { bidStroke } from "../../../../_components/bid-letter";
import { HorizontalAxis, LimitRule, VerticalAxis } from "../../../../_components/chart/axes";
import { spreadLabels } from "../../../../_components/chart/spread-labels";
import styles from "./outlook-chart.module.css";
import { isClosed, type LevelDomain, type OutlookLine } from "./outlook-line";
import { outlookRuns } from "./outlook-runs";

/** How large a drawing is and how many ticks it has room for. */
export type ChartSize = Readonly<{ width: number; height: number; levelTicks: number; yearTicks: number }>;

export const fullChart: ChartSize = { width: 760, height: 420, levelTicks: 6, yearTicks: 10 };
export const narrowChart: ChartSize = { width: 340, height: 340, levelTicks: 5, yearTicks: 4 };
export const smallChart: ChartSize = { width: 310, height: 240, levelTicks: 3, yearTicks: 4 };

const margin = { top: 34, right: 28, bottom: 48, left: 46 };

/** A mark of its own shape for each bid, so that colour carries nothing alone. */
const shapes = [symbolCircle, symbolSquare, symbolTriangle, symbolDiamond, symbolStar, symbolWye] as const;
const markSize = 62; // area in square units of the drawing

const markOf = (index: number) => symbol(shapes[index % shapes.length] ?? symbolCircle, markSize)() ?? "";

/** The mark of a bid by itself, for the words beside a drawing. */
export function BidMark({ index }: { index: number }) {
  return (
    <svg className={styles.mark} viewBox="-8 -8 16 16" width="16" height="16" aria-hidden="true">
      <path d={markOf(index)} stroke={bidStroke(index)} className={styles.stated} />
    </svg>
  );
}

/** Impact level by year: likely lines, their ranges as bands, stated levels as marks, the owner's window and limit. */
export function OutlookChart({
  id,
  label,
  lines,
  requirement: { limit, targetWindow, horizonYears },
  domain,
  size,
  units,
}: {
  id: string;
  label: string;
  lines: readonly OutlookLine[];
  requirement: ImpactRequirement;
  domain: LevelDomain;
  size: ChartSize;
  units: UnitSystem;
}) {
  const [lowest, highest] = domain;
  const right = size.width - margin.right;
  const bottom = size.height - margin.bottom;
  const x = scaleLinear([0, horizonYears], [margin.left, right]);
  const y = scaleLinear([lowest, highest], [bottom, margin.top]);
  const open = { low: y(lowest) + size.height, high: y(highest) - size.height }; // where an open side leaves the drawing
  const height = (level: number) =>
    Number.isFinite(level) ? y(level) : level === Number.POSITIVE_INFINITY ? open.high : open.low;
  const band = area<OutlookYear>(
    (d) => x(d.year),
    (d) => height(d.low),
    (d) => height(d.high),
  );
  const likely = line<OutlookYear>(
    (d) => x(d.year),
    (d) => height(drawnLevel(d)),
  );
  const labels = spreadLabels(
    lines.map(({ outlook: { years } }) => height(drawnLevel(years.at(-1)))),
    18,
    { from: margin.top, to: bottom },
  );
  const window = { low: Math.min(bottom, y(targetWindow.low.value)), high: y(targetWindow.high.value) };
  return (
    <svg viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={label}>
      <clipPath id={id}>
        <rect x={margin.left} y={margin.top} width={right - margin.left} height={bottom - margin.top} />
      </clipPath>
      <rect
        className={styles.window}
        x={margin.left}
        width={right - margin.left}
        y={window.high}
        height={Math.max(0, window.low - window.high)}
      />
      <VerticalAxis
        scale={y}
        from={margin.left}
        to={right}
        name={`Impact level, ${unitFor("impactLevel", units)}`}
        ticks={size.levelTicks}
      />
      <HorizontalAxis scale={x} y={bottom} name="years in use" ticks={Math.min(horizonYears, size.yearTicks)} />
      <g clipPath={`url(#${id})`}>
        {lines.flatMap(({ letter, index, outlook }) =>
          outlookRuns(outlook.years).map(({ extrapolated, years }) => (
            <path
              key={`${letter} ${years[0]?.year}`}
              d={band(years) ?? ""}
              fill={bidStroke(index)}
              className={extrapolated ? styles.farBand : styles.band}
            />
          )),
        )}
        {lines.flatMap(({ letter, index, outlook }) =>
          outlookRuns(outlook.years).map(({ extrapolated, years }) => (
            <path
              key={`${letter} ${years[0]?.year}`}
              d={likely(years) ?? ""}
              stroke={bidStroke(index)}
              strokeDasharray={extrapolated ? "2 4" : undefined}
              className={extrapolated ? styles.farLikely : styles.likely}
            />
          )),
        )}
      </g>
      <text className={styles.windowWords} x={right - 6} y={window.low - 6} textAnchor="end">
        target window
      </text>
      <LimitRule
        y={y(limit.value)}
        from={margin.left}
        to={right}
        words={`limit ${formatValue("impactLevel", limit.value, units)}`}
      />
      {lines.flatMap(({ letter, index, stated }) =>
        stated
          .filter(({ years }) => years <= horizonYears)
          .map(({ years, level }) => (
            <StatedMark
              key={`${letter} ${years} ${level.low} ${level.high}`}
              index={index}
              x={x(years)}
              level={level}
              y={(g) => Math.max(margin.top, Math.min(bottom, y(g)))}
            />
          )),
      )}
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

/** The likely level, or the known edge of a range that is open on the other side. */
function drawnLevel(year: LevelSpan | undefined): number {
  if (year === undefined) return 0;
  if (isClosed(year)) return year.likely;
  return Number.isFinite(year.high) ? year.high : year.low;
}

const arrow = 16;

/** A stated level: a mark at its middle with its range, or at its bound with an arrow to the side it leaves open. */
function StatedMark({
  index,
  x,
  y,
  level: { low, high },
}: {
  index: number;
  x: number;
  y: (level: number) => number;
  level: Interval<"g">;
}) {
  const closed = isClosed({ low, high });
  const at = closed ? (low + high) / 2 : Number.isFinite(low) ? low : high;
  const whisker = closed
    ? `M${x} ${y(low)}V${y(high)}`
    : Number.isFinite(low)
      ? `M${x} ${y(at)}v${-arrow}m-4 6l4 -6l4 6`
      : `M${x} ${y(at)}v${arrow}m-4 -6l4 6l4 -6`;
  return (
    <g stroke={bidStroke(index)} className={styles.stated}>
      <path d={whisker} />
      <path transform={`translate(${x} ${y(at)})`} d={markOf(index)} />
    </g>
  );
}
