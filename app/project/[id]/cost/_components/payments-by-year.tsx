import { scaleBand, scaleLinear } from "d3-scale";
import { formatMoney } from "#lib/quantity";
import { bidStroke } from "../../../../_components/bid-letter";
import { HorizontalAxis, VerticalAxis } from "../../../../_components/chart/axes";
import type { DrawingWidth } from "../../../../_components/chart/drawing-width";
import styles from "./payments-by-year.module.css";
import type { PricedBid } from "./priced-bid";

type Size = Readonly<{ width: number; left: number; right: number; yearTicks: number }>;

const sizes: Readonly<Record<DrawingWidth, Size>> = {
  wide: { width: 760, left: 92, right: 20, yearTicks: 10 },
  narrow: { width: 340, left: 76, right: 10, yearTicks: 4 },
};
const top = 34;
const panel = 120;
const gap = 26;

/** What each bid costs in each year, one row of bars a bid, all rows on one scale. A credit reaches below nothing. */
export function PaymentsByYear({
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
  const { width, left, yearTicks, ...drawn } = sizes[size];
  const right = width - drawn.right;
  const paid = bids.flatMap(({ bid }) => bid.cost.yearly);
  const range = [Math.min(0, ...paid), Math.max(1, ...paid)];
  const bands = scaleBand(
    Array.from({ length: years + 1 }, (_, year) => year),
    [left, right],
  ).padding(0.25);
  const middle = bands.bandwidth() / 2;
  const x = scaleLinear([0, years], [(bands(0) ?? left) + middle, (bands(years) ?? right) + middle]);
  const bottom = top + bids.length * (panel + gap) - gap;
  return (
    <svg
      viewBox={`0 0 ${width} ${bottom + 56}`}
      role="img"
      aria-label="Payments of each bid by year, as summed up above and listed in the table below"
    >
      {bids.map(({ bid, index }, row) => {
        const from = top + row * (panel + gap);
        const y = scaleLinear(range, [from + panel, from]);
        return (
          <g key={bid.id}>
            <VerticalAxis
              scale={y}
              from={left}
              to={right}
              name={row === 0 ? "Paid in the year" : ""}
              ticks={3}
              format={(cents) => formatMoney(cents, currency)}
            />
            <text className={styles.letter} x={right} y={from + 14} textAnchor="end" fill={bidStroke(index)}>
              {bid.letter}
            </text>
            {bid.cost.yearly.map((cents, year) =>
              cents === 0 ? null : (
                <rect
                  // biome-ignore lint/suspicious/noArrayIndexKey: the index is the year
                  key={year}
                  className={cents < 0 ? styles.credit : undefined}
                  fill={bidStroke(index)}
                  stroke={bidStroke(index)}
                  x={bands(year)}
                  width={bands.bandwidth()}
                  y={Math.min(y(0), y(cents))}
                  height={Math.max(1, Math.abs(y(cents) - y(0)))}
                />
              ),
            )}
            <path className={styles.nothing} d={`M${left} ${y(0)}H${right}`} />
          </g>
        );
      })}
      <HorizontalAxis scale={x} y={bottom + 8} name="years after the base date" ticks={Math.min(years, yearTicks)} />
    </svg>
  );
}
