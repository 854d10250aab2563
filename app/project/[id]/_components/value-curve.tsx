import { scaleLinear } from "d3-scale";
import { type CurvePoint, likelyFigure, type Measure, type ScoreRule, valueAt, valueCurve } from "#lib/criteria";
import { judgedInWords } from "#lib/evaluation";
import type { Figure } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import { bidStroke } from "../../../_components/bid-letter";
import { spreadLabels } from "../../../_components/chart/spread-labels";
import styles from "./value-curve.module.css";

type Ends = Readonly<{ low: number; high: number }>;

/** A bid's figure on the curve, or below it where it counts for less; only figures that count are drawn. */
export type CurveMark = Readonly<{
  letter: string;
  index: number;
  figure: Figure;
  /** What the figure may be where it is scored; null where it is unknown. */
  span: Ends | null;
  /** What a value of the line counts for. */
  worthOf: (value: number) => number;
}>;

const width = 360;
const height = 190;
const margin = { top: 26, right: 20, bottom: 34, left: 40 };

/** An interval cut to what the drawing shows. */
const cutTo = (span: Ends, { low, high }: Ends): Ends => ({
  low: Math.min(Math.max(span.low, low), high),
  high: Math.max(Math.min(span.high, high), low),
});

function domainOf(corners: readonly CurvePoint[], marks: readonly CurveMark[]): Ends {
  const figures = marks.flatMap(({ span }) => (span === null ? [] : [span.low, span.high].filter(Number.isFinite)));
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
  measure,
  marks,
  units,
  name,
}: {
  rule: ScoreRule;
  measure: Measure;
  marks: readonly CurveMark[];
  units: UnitSystem;
  name: string;
}) {
  const corners = valueCurve(rule);
  const domain = domainOf(corners, marks);
  const x = scaleLinear([domain.low, domain.high], [margin.left, width - margin.right]);
  const y = scaleLinear([0, 1], [height - margin.bottom, margin.top]);
  const path = (points: readonly CurvePoint[], worthOf = (value: number) => value) =>
    `M${points.map(({ figure, value }) => `${x(figure)} ${y(worthOf(value))}`).join("L")}`;
  const placed = marks.flatMap((mark) => {
    if (mark.figure.kind === "unknown" || mark.span === null) return [];
    return [{ ...mark, likely: likelyFigure(mark.figure), ends: cutTo(mark.span, domain) }];
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
          {judgedInWords(measure, figure, units)}
        </text>
      ))}
      <path className={styles.line} d={path(between(corners, domain, rule))} />
      {placed.map(({ letter, index, ends, worthOf }) => (
        <path
          key={letter}
          className={styles.range}
          d={path(between(corners, ends, rule), worthOf)}
          stroke={bidStroke(index)}
        />
      ))}
      {placed.map(({ letter, index, likely, worthOf }, position) => (
        <g key={letter}>
          <path
            className={styles.lead}
            d={`M${labels[position] ?? x(likely)} ${margin.top - 10}L${x(likely)} ${y(worthOf(valueAt(rule, likely)))}`}
          />
          <circle
            cx={x(likely)}
            cy={y(worthOf(valueAt(rule, likely)))}
            r="4.5"
            fill={bidStroke(index)}
            className={styles.dot}
          />
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
