import { scaleLinear } from "d3-scale";
import type { TraceResults } from "#lib/trace";
import { HorizontalAxis, VerticalAxis } from "../../../../../_components/chart/axes";
import type { DrawingWidth } from "../../../../../_components/chart/drawing-width";
import { traceCurve } from "../../_tests/trace-curve";
import styles from "./trace-chart.module.css";

const sizes = { wide: { width: 760, height: 380, ticks: 8 }, narrow: { width: 340, height: 320, ticks: 4 } } as const;
const margin = { top: 34, right: 24, bottom: 48, left: 46 };
const milliseconds = 1000;

/** Level against time with the interval of the criterion shaded and the highest sample marked. */
export function TraceChart({ results, width, label }: { results: TraceResults; width: DrawingWidth; label: string }) {
  const size = sizes[width];
  const { trace, pulse, criterionInterval } = results;
  const curve = traceCurve(results, 2 * size.width);
  const [right, bottom] = [size.width - margin.right, size.height - margin.bottom];
  const x = scaleLinear([curve.from, curve.to], [margin.left, right]);
  const y = scaleLinear([curve.lowest, curve.highest], [bottom, margin.top]).nice(6);
  const shade = [criterionInterval.from, criterionInterval.to].map((time) =>
    Math.min(right, Math.max(margin.left, x(time * milliseconds))),
  );
  const [from = 0, to = 0] = shade;
  const line = curve.points.map(({ time, level }) => `${x(time).toFixed(1)} ${y(level).toFixed(1)}`).join("L");
  const peak =
    pulse === null ? null : { time: pulse.peak * trace.interval * milliseconds, level: trace.levels[pulse.peak] ?? 0 };
  return (
    <svg viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={label}>
      {to > from ? (
        <rect x={from} y={margin.top} width={to - from} height={bottom - margin.top} className={styles.interval} />
      ) : null}
      <VerticalAxis scale={y} from={margin.left} to={right} name="Level, g" />
      <HorizontalAxis scale={x} y={bottom} name="time, ms" ticks={size.ticks} />
      <path d={`M${line}`} className={styles.curve} />
      {peak === null ? null : <circle cx={x(peak.time)} cy={y(peak.level)} r="4" className={styles.peak} />}
    </svg>
  );
}
