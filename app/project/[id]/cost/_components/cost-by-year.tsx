import { scaleLinear } from "d3-scale";
import { curveStepAfter, line } from "d3-shape";
import { formatMoney } from "#lib/quantity";
import { bidDash, bidStroke } from "../../../../_components/bid-letter";
import { HorizontalAxis, VerticalAxis } from "../../../../_components/chart/axes";
import { spreadLabels } from "../../../../_components/chart/spread-labels";
import styles from "./cost-by-year.module.css";
import type { PricedBid } from "./priced-bid";
import { runningTotal } from "./running-total";

const width = 760;
const height = 420;
const margin = { top: 34, right: 48, bottom: 48, left: 92 };

/** What each bid has cost so far, year by year; a payment is a step at the end of its year. */
export function CostByYear({ bids, years, currency }: { bids: readonly PricedBid[]; years: number; currency: string }) {
  const totals = bids.map(({ bid }) => runningTotal(bid.cost.yearly));
  const x = scaleLinear([0, years], [margin.left, width - margin.right]);
  const y = scaleLinear(
    [Math.min(0, ...totals.flat()), Math.max(1, ...totals.flat())],
    [height - margin.bottom, margin.top],
  ).nice(6);
  const right = width - margin.right;
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
        from={margin.left}
        to={right}
        name="Cost so far"
        format={(cents) => formatMoney(cents, currency)}
      />
      <HorizontalAxis
        scale={x}
        y={height - margin.bottom}
        name="years after the base date"
        ticks={Math.min(years, 10)}
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
