import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";
import type { CostOutcome } from "#lib/cost";
import { formatMoney } from "#lib/quantity";
import { bidDash, bidStroke } from "../../../../../_components/bid-letter";
import { HorizontalAxis, VerticalAxis } from "../../../../../_components/chart/axes";
import type { DrawingWidth } from "../../../../../_components/chart/drawing-width";
import { spreadLabels } from "../../../../../_components/chart/spread-labels";
import type { DrawnBid } from "./drawn-bid";
import styles from "./uncertainty.module.css";

type Size = Readonly<{ width: number; height: number; left: number; right: number; ticks: number }>;

const sizes: Readonly<Record<DrawingWidth, Size>> = {
  wide: { width: 760, height: 360, left: 60, right: 40, ticks: 6 },
  narrow: { width: 340, height: 320, left: 44, right: 26, ticks: 3 },
};
const margin = { top: 52, bottom: 48 };

/** How many draws in a hundred cost no more than each sum: the rising curve of each bid. */
export function ChanceChart({
  outcome,
  bids,
  currency,
  size,
}: {
  outcome: CostOutcome;
  bids: readonly DrawnBid[];
  currency: string;
  size: DrawingWidth;
}) {
  const { width, height, left, ticks, ...drawn } = sizes[size];
  const right = width - drawn.right;
  const rows = outcome.bids.flatMap(({ bid: id, curve }) => {
    const bid = bids.find((one) => one.id === id);
    return bid === undefined ? [] : [{ bid, curve }];
  });
  const costs = rows.flatMap(({ curve }) => curve.map(({ cents }) => cents));
  const [low, high] = [Math.min(...costs), Math.max(...costs)];
  const x = scaleLinear([low, high > low ? high : low + 1], [left, right]).nice(ticks);
  const y = scaleLinear([0, 100], [height - margin.bottom, margin.top]);
  const rising = line<Readonly<{ chance: number; cents: number }>>(
    ({ cents }) => x(cents),
    ({ chance }) => y(chance * 100),
  );
  const labels = spreadLabels(
    rows.map(({ curve }) => x(curve.at(-1)?.cents ?? low)),
    22,
  );
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label="How many draws in a hundred cost no more than each sum, as listed in the table below"
    >
      <VerticalAxis scale={y} from={left} to={right} name="draws in 100" ticks={4} format={String} />
      <HorizontalAxis
        scale={x}
        y={height - margin.bottom}
        name="that cost no more than this"
        ticks={ticks}
        format={(cents) => formatMoney(cents, currency)}
      />
      {rows.map(({ bid, curve }, row) => (
        <g key={bid.id}>
          <path
            className={styles.curve}
            d={rising(curve) ?? ""}
            stroke={bidStroke(bid.index)}
            strokeDasharray={bidDash(bid.index)}
          />
          <text
            className={styles.letter}
            x={labels[row]}
            y={margin.top - 12}
            textAnchor="middle"
            fill={bidStroke(bid.index)}
          >
            {bid.letter}
          </text>
        </g>
      ))}
    </svg>
  );
}
