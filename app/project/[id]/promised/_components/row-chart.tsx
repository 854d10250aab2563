import { scaleLinear } from "d3-scale";
import { propertyOf, shownIn } from "#lib/claim";
import { formatValue, inUnit, measured, type UnitSystem, unitFor } from "#lib/quantity";
import type { PromisedRow } from "#lib/submittal";
import { HorizontalAxis, LimitRule, VerticalAxis } from "../../../../_components/chart/axes";
import type { DrawingWidth } from "../../../../_components/chart/drawing-width";
import { type ChartPoint, limitRules, pointsOf } from "../_rows/chart-points";
import styles from "./row-chart.module.css";

const sizes = { wide: { width: 760, height: 320, ticks: 8 }, narrow: { width: 340, height: 300, ticks: 4 } } as const;
const margin = { top: 34, right: 70, bottom: 48, left: 52 };

/** One property over the years: promises as hollow marks, measurements as full ones on a line, limits as rules. */
export function RowChart({
  row,
  width,
  units,
  label,
}: {
  row: PromisedRow;
  width: DrawingWidth;
  units: UnitSystem;
  label: string;
}) {
  const property = propertyOf(row.property);
  if (property.kind !== "quantity") return null;
  const { dimension } = property;
  const shown = shownIn(property, units);
  const unit = typeof shown === "string" ? unitFor(dimension, units) : shown.unit;
  const inShown = (si: number) => inUnit(dimension, measured(dimension, si), unit as never);
  const points = pointsOf(row);
  const rules = limitRules(row, (si) => formatValue(dimension, measured(dimension, si), shown));
  const values = [...points.map(({ value }) => value), ...rules.map(({ value }) => value)].map(inShown);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const room = Math.max((most - least) * 0.15, Math.abs(most) * 0.05, 1e-6);
  const size = sizes[width];
  const [right, bottom] = [size.width - margin.right, size.height - margin.bottom];
  const last = Math.max(3, ...points.map(({ years }) => years));
  const x = scaleLinear([0, last], [margin.left + 14, right]);
  const y = scaleLinear([Math.max(0, least - room), most + room], [bottom, margin.top]).nice(5);
  const at = ({ years, value }: ChartPoint) => [x(years), y(inShown(value))] as const;
  const done = points.filter(({ by }) => by === "measured");
  const line = done
    .map((point) =>
      at(point)
        .map((place) => place.toFixed(1))
        .join(" "),
    )
    .join("L");
  const end = done.at(-1);
  return (
    <svg viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={label}>
      <VerticalAxis scale={y} from={margin.left} to={right} name={`${property.label}, ${unit}`} />
      <HorizontalAxis scale={x} y={bottom} name="years since acceptance" ticks={Math.min(size.ticks, last)} />
      {rules.map(({ value, words }) => (
        <LimitRule key={words} y={y(inShown(value))} from={margin.left} to={right} words={words} />
      ))}
      <g className={styles.promised}>
        {points
          .filter(({ by }) => by !== "measured")
          .map((point) => {
            const [cx, cy] = at(point);
            return point.by === "bid" ? (
              <circle key={`bid ${point.years} ${point.value}`} cx={cx} cy={cy} r="5" />
            ) : (
              <path key={`submitted ${point.years} ${point.value}`} d={`M${cx} ${cy - 6}l6 6-6 6-6-6z`} />
            );
          })}
      </g>
      <g className={styles.measured}>
        {line === "" ? null : <path d={`M${line}`} />}
        {done.map((point) => {
          const [cx, cy] = at(point);
          return <circle key={`${point.years} ${point.value}`} cx={cx} cy={cy} r="4.5" />;
        })}
      </g>
      {end === undefined ? null : (
        <text x={at(end)[0] + 4} y={at(end)[1] - 11} className={styles.word}>
          measured
        </text>
      )}
    </svg>
  );
}
