import { scaleLinear } from "d3-scale";
import { area } from "d3-shape";
import { HorizontalAxis, VerticalAxis } from "../../../../_components/chart/axes";
import type { ChanceLine } from "./chance-line";
import styles from "./shares-chart.module.css";
import { type SharesYear, shareKinds, sharesOf } from "./shares-of-year";

const size = { width: 310, height: 236 };
const margin = { top: 30, right: 14, bottom: 48, left: 46 };

/** Which part of the locations lies where, by year, for one bid: too soft, in the window, above it, at the limit. */
export function SharesChart({ label, line, horizon }: { label: string; line: ChanceLine; horizon: number }) {
  const years = sharesOf(line.outlook.years);
  const right = size.width - margin.right;
  const bottom = size.height - margin.bottom;
  const x = scaleLinear([0, horizon], [margin.left, right]);
  const y = scaleLinear([0, 100], [bottom, margin.top]);
  const part = (from: keyof SharesYear, to: keyof SharesYear) =>
    area<SharesYear>(
      (d) => x(d.year),
      (d) => y(d[from] * 100),
      (d) => y(d[to] * 100),
    )(years) ?? "";
  return (
    <svg viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={label}>
      <VerticalAxis scale={y} from={margin.left} to={right} name="Locations, %" ticks={4} />
      {shareKinds.map(({ id, from, to }) => (
        <path key={id} d={part(from, to)} className={styles[id]} />
      ))}
      <HorizontalAxis scale={x} y={bottom} name="years in use" ticks={Math.min(horizon, 4)} />
    </svg>
  );
}

/** Which fill stands for which part. */
export function SharesKey() {
  return (
    <ul className={styles.key} aria-label="Fills of the drawings below">
      {shareKinds.map(({ id, label }) => (
        <li key={id}>
          <svg viewBox="0 0 26 14" width="26" height="14" aria-hidden="true">
            <rect x="1" y="1" width="24" height="12" className={styles[id]} />
          </svg>
          {label}
        </li>
      ))}
    </ul>
  );
}
