import { scaleLinear } from "d3-scale";
import { curveStepAfter, line } from "d3-shape";
import { formatMoney } from "#lib/quantity";
import { bidDash, bidStroke } from "../../../../_components/bid-letter";
import { HorizontalAxis, VerticalAxis } from "../../../../_components/chart/axes";
import type { DrawingWidth } from "../../../../_components/chart/drawing-width";
import { spreadLabels } from "../../../../_components/chart/spread-labels";
import styles from "./cost-by-year.module.css";
import type { PricedBid } from "./priced-bid";
import { runningTotal } from "./running-total";

type Size = Readonly<{ width: number; height: number; left: number; right: number; yearTicks: number }>;

const sizes: Readonly<Record<DrawingWidth, Size>> = {
  wide: { width: 760, height: 420, left: 92, right: 48, yearTicks: 10 },
  narrow: { width: 340, height: 340, left: 80, right: 26, yearTicks: 4 },
};
const margin = { top: 34, bottom: 48 };

/** What each bid has cost so far, year by year; a payment is a step at the end of its year. */
export function CostByYear({
  bids,
  years,
  currency,
  size,
}: {
  bids: readonly PricedBid[];
  years: number;
  currency: string;
  size: DrawingWidth;
}) {
  const { width, height, left, yearTicks, ...drawn } = sizes[size];
  const right = width - drawn.right;
  const totals = bids.map(({ bid }) => runningTotal(bid.cost.yearly));
  const x = scaleLinear([0, years], [left, right]);
  const y = scaleLinear(
    [Math.min(0, ...totals.flat()), Math.max(1, ...totals.flat())],
    [height - margin.bottom, margin.top],
  ).nice(6);
  const steps = line<number>(
    (_, year) => x(year),
    (cents) => y(cents),
  ).curve(curveStepAfter);
  const labels = spreadLabels(
    totals.map((cents) => y(cents.at(-1) ?? 0)),
    17,
  );
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label="Cost so far of each bid by year, as summed up above and listed in the table below"
    >
      <VerticalAxis
        scale={y}
        from={left}
        to={right}
        name="Cost so far"
        format={(cents) => formatMoney(cents, currency)}
      />
      <HorizontalAxis
        scale={x}
        y={height - margin.bottom}
        name="years after the base date"
        ticks={Math.min(years, yearTicks)}
      />
      {bids.map(({ bid, index }, position) => (
        <path
          key={bid.id}
          d={steps(totals[position] ?? []) ?? ""}
          stroke={bidStroke(index)}
          strokeDasharray={bidDash(index)}
          className={styles.line}
        />
      ))}
      {bids.map(({ bid, index }, position) => (
        <text
          key={bid.id}
          x={right + 10}
          y={labels[position]}
          dy="0.32em"
          fill={bidStroke(index)}
          className={styles.letter}
        >
          {bid.letter}
        </text>
      ))}
    </svg>
  );
}
