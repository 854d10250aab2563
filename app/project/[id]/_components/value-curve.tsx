import { scaleLinear } from "d3-scale";
import { type CurvePoint, type ScoreRule, valueAt, valueCurve } from "#lib/criteria";
import { type Figure, intervalOfFigure } from "#lib/figure";
import { type DimensionName, formatValue, measured, type UnitSystem } from "#lib/quantity";
import { bidStroke } from "../../../_components/bid-letter";
import { spreadLabels } from "../../../_components/chart/spread-labels";
import styles from "./value-curve.module.css";

/** A bid's figure on the curve; only figures that count are drawn. */
export type CurveMark = Readonly<{ letter: string; index: number; figure: Figure }>;

const width = 360;
const height = 190;
const margin = { top: 26, right: 20, bottom: 34, left: 40 };

type Ends = Readonly<{ low: number; high: number }>;

/** The interval of a figure cut to what the drawing shows. */
function endsOf(figure: Figure, { low, high }: Ends): Ends | null {
  const interval = intervalOfFigure(figure);
  if (interval === null) return null;
  return { low: Math.min(Math.max(interval.low, low), high), high: Math.max(Math.min(interval.high, high), low) };
}

/** The point a bid is judged by: as stated, the middle of a range, the bound of a one-sided figure. */
function likelyOf(figure: Figure): number | null {
  switch (figure.kind) {
    case "known":
      return figure.value;
    case "range":
      return (figure.low + figure.high) / 2;
    case "at-least":
      return figure.low;
    case "at-most":
      return figure.high;
    case "unknown":
      return null;
  }
}

function domainOf(corners: readonly CurvePoint[], marks: readonly CurveMark[]): Ends {
  const figures = marks.flatMap(({ figure }) => {
    const interval = intervalOfFigure(figure);
    return interval === null ? [] : [interval.low, interval.high].filter(Number.isFinite);
  });
  const all = [...corners.map(({ figure }) => figure), ...figures];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const beyond = (high - low || Math.abs(high) || 1) * 0.06;
  return { low: low - beyond, high: high + beyond };
}

const between = (corners: readonly CurvePoint[], { low, high }: Ends, rule: ScoreRule): readonly CurvePoint[] => [
  { figure: low, value: valueAt(rule, low) },
  ...corners.filter(({ figure }) => low < figure && figure < high),
  { figure: high, value: valueAt(rule, high) },
];

/** Value from 0 to 100 over the figure, with the bids on the line. */
export function ValueCurve({
  rule,
  dimension,
  marks,
  units,
  name,
}: {
  rule: ScoreRule;
  dimension: DimensionName;
  marks: readonly CurveMark[];
  units: UnitSystem;
  name: string;
}) {
  const corners = valueCurve(rule);
  const domain = domainOf(corners, marks);
  const x = scaleLinear([domain.low, domain.high], [margin.left, width - margin.right]);
  const y = scaleLinear([0, 1], [height - margin.bottom, margin.top]);
  const path = (points: readonly CurvePoint[]) =>
    `M${points.map(({ figure, value }) => `${x(figure)} ${y(value)}`).join("L")}`;
  const placed = marks.flatMap((mark) => {
    const likely = likelyOf(mark.figure);
    const ends = endsOf(mark.figure, domain);
    return likely === null || ends === null ? [] : [{ ...mark, likely, ends }];
  });
  const labels = spreadLabels(
    placed.map(({ likely }) => x(likely)),
    16,
  );
  const named = [corners[0], corners.at(-1)].flatMap((corner) => (corner === undefined ? [] : [corner]));
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={`Value of ${name}, anchors and bids as listed beside it`}
    >
      {[0, 0.5, 1].map((value) => (
        <g key={value} className={styles.grid}>
          <path d={`M${margin.left} ${y(value)}H${width - margin.right}`} />
          <text x={margin.left - 6} y={y(value)} dy="0.34em" textAnchor="end">
            {value * 100}
          </text>
        </g>
      ))}
      {named.map(({ figure }, position) => (
        <text
          key={figure}
          className={styles.anchor}
          x={x(figure)}
          y={height - margin.bottom + 18}
          textAnchor={position === 0 ? "start" : "end"}
        >
          {formatValue(dimension, measured(dimension, figure), units)}
        </text>
      ))}
      <path className={styles.line} d={path(between(corners, domain, rule))} />
      {placed.map(({ letter, index, ends }) => (
        <path key={letter} className={styles.range} d={path(between(corners, ends, rule))} stroke={bidStroke(index)} />
      ))}
      {placed.map(({ letter, index, likely }, position) => (
        <g key={letter}>
          <path
            className={styles.lead}
            d={`M${labels[position] ?? x(likely)} ${margin.top - 10}L${x(likely)} ${y(valueAt(rule, likely))}`}
          />
          <circle cx={x(likely)} cy={y(valueAt(rule, likely))} r="4.5" fill={bidStroke(index)} className={styles.dot} />
          <text
            className={styles.letter}
            x={labels[position]}
            y={margin.top - 13}
            textAnchor="middle"
            fill={bidStroke(index)}
          >
            {letter}
          </text>
        </g>
      ))}
    </svg>
  );
}
