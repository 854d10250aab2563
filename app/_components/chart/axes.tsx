import type { ScaleLinear } from "d3-scale";
import styles from "./axes.module.css";

type Scale = ScaleLinear<number, number>;

/** A quiet horizontal axis: ticks below the drawing, its name at the end. */
export function HorizontalAxis({
  scale,
  y,
  name,
  ticks = 8,
  format = scale.tickFormat(ticks),
}: {
  scale: Scale;
  y: number;
  name: string;
  ticks?: number;
  format?: (value: number) => string;
}) {
  const [start = 0, end = 0] = scale.range();
  return (
    <g className={styles.axis}>
      <path d={`M${start} ${y}H${end}`} />
      {scale.ticks(ticks).map((tick) => (
        <g key={tick}>
          <path d={`M${scale(tick)} ${y}v5`} />
          <text x={scale(tick)} y={y + 20} textAnchor="middle">
            {format(tick)}
          </text>
        </g>
      ))}
      <text x={end} y={y + 40} textAnchor="end" className={styles.name}>
        {name}
      </text>
    </g>
  );
}

/** A quiet vertical axis: hairlines across the drawing, its name above. */
export function VerticalAxis({
  scale,
  from,
  to,
  name,
  ticks = 6,
  format = scale.tickFormat(ticks),
}: {
  scale: Scale;
  from: number;
  to: number;
  name: string;
  ticks?: number;
  format?: (value: number) => string;
}) {
  const top = Math.min(...scale.range());
  return (
    <g className={styles.axis}>
      {scale.ticks(ticks).map((tick) => (
        <g key={tick}>
          <path className={styles.hairline} d={`M${from} ${scale(tick)}H${to}`} />
          <text x={from - 8} y={scale(tick)} dy="0.32em" textAnchor="end">
            {format(tick)}
          </text>
        </g>
      ))}
      <text x={from - 8} y={top - 14} textAnchor="start" className={styles.name}>
        {name}
      </text>
    </g>
  );
}

/** A limit drawn as a rule with its words above it, or below it where the drawing ends right above. */
export function LimitRule({
  y,
  from,
  to,
  words,
  side = "above",
  wordsAt = "start",
}: {
  y: number;
  from: number;
  to: number;
  words: string;
  side?: "above" | "below";
  /** At which end of the rule its words stand. */
  wordsAt?: "start" | "end";
}) {
  return (
    <g className={styles.limit}>
      <path d={`M${from} ${y}H${to}`} />
      <text
        x={wordsAt === "start" ? from + 6 : to - 6}
        y={side === "above" ? y - 6 : y + 17}
        textAnchor={wordsAt === "start" ? "start" : "end"}
      >
        {words}
      </text>
    </g>
  );
}
