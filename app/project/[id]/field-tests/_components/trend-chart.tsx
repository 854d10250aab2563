import { scaleLinear } from "d3-scale";
import type { PromisedLevels, TrendPoint } from "#lib/fieldtest";
import { formatValue, type In, type UnitSystem, unitFor } from "#lib/quantity";
import { bidStroke } from "../../../../_components/bid-letter";
import { HorizontalAxis, LimitRule, VerticalAxis } from "../../../../_components/chart/axes";
import type { DrawingWidth } from "../../../../_components/chart/drawing-width";
import { spreadLabels } from "../../../../_components/chart/spread-labels";
import { trendReach, trendRules } from "../_tests/trend-layout";
import styles from "./trend-chart.module.css";

const sizes = { wide: { width: 760, height: 380, ticks: 8 }, narrow: { width: 340, height: 320, ticks: 4 } } as const;
const margin = { top: 34, right: 62, bottom: 48, left: 46 };

/** Mean and worst level of each campaign over the age of the field, with what was promised and the limit. */
export function TrendChart({
  points,
  promised,
  limit,
  index,
  width,
  units,
  label,
}: {
  points: readonly TrendPoint[];
  promised: PromisedLevels;
  limit: In<"g">;
  /** Place of the installed bid, for its colour. */
  index: number;
  width: DrawingWidth;
  units: UnitSystem;
  label: string;
}) {
  const size = sizes[width];
  const reach = trendReach(points, promised, limit);
  const [right, bottom] = [size.width - margin.right, size.height - margin.bottom];
  const x = scaleLinear(reach.years, [margin.left + 14, right]);
  const y = scaleLinear(reach.levels, [bottom, margin.top]);
  const grams = (level: In<"g">) => formatValue("impactLevel", level, units);
  const last = points.at(-1);
  const ends = last === undefined ? [] : spreadLabels([y(last.worst), y(last.mean)], 17);
  const line = (of: (point: TrendPoint) => number) =>
    `M${points.map((point) => `${x(point.years).toFixed(1)} ${y(of(point)).toFixed(1)}`).join("L")}`;
  return (
    <svg viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={label}>
      <VerticalAxis scale={y} from={margin.left} to={right} name={`Impact level, ${unitFor("impactLevel", units)}`} />
      <HorizontalAxis
        scale={x}
        y={bottom}
        name="years since acceptance"
        ticks={Math.min(size.ticks, reach.years[1] - reach.years[0])}
      />
      {trendRules(promised, limit, grams).map(({ level, words, tone, until }) =>
        tone === "limit" ? (
          <LimitRule key={words} y={y(level)} from={margin.left} to={right} words={words} />
        ) : (
          <g key={words} className={styles.promise}>
            <path d={`M${margin.left} ${y(level)}H${until === null ? right : Math.min(right, x(until))}`} />
            <text x={right - 6} y={y(level) + 15} textAnchor="end">
              {words}
            </text>
          </g>
        ),
      )}
      <g stroke={bidStroke(index)} className={styles.drawn}>
        <path d={line(({ worst }) => worst)} strokeDasharray="2 4" />
        <path d={line(({ mean }) => mean)} />
        {points.map((point) => (
          <g key={point.campaign}>
            <path d={`M${x(point.years)} ${y(point.worst) - 7}l7 12h-14z`} className={styles.mark} />
            <circle cx={x(point.years)} cy={y(point.mean)} r="5" className={styles.mark} />
          </g>
        ))}
      </g>
      {last === undefined
        ? null
        : ["worst", "mean"].map((word, place) => (
            <text
              key={word}
              x={x(last.years) + 11}
              y={ends[place]}
              dy="0.32em"
              fill={bidStroke(index)}
              className={styles.word}
            >
              {word}
            </text>
          ))}
    </svg>
  );
}
