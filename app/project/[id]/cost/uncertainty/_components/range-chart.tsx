import { scaleLinear } from "d3-scale";
import type { CostOutcome } from "#lib/cost";
import { bidStroke } from "../../../../../_components/bid-letter";
import type { DrawingWidth } from "../../../../../_components/chart/drawing-width";
import { CostAxis } from "../../_components/cost-axis";
import type { DrawnBid } from "./drawn-bid";
import styles from "./uncertainty.module.css";

const sizes: Readonly<Record<DrawingWidth, Readonly<{ width: number; left: number; right: number; ticks: number }>>> = {
  wide: { width: 760, left: 40, right: 40, ticks: 6 },
  narrow: { width: 340, left: 30, right: 16, ticks: 3 },
};
const step = 46;
const barHeight = 22;

/** The range of each bid’s drawn cost, one bid a row. */
export function RangeChart({
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
  const { width, left, right, ticks } = sizes[size];
  const rows = outcome.bids.flatMap((drawn) => {
    const bid = bids.find(({ id }) => id === drawn.bid);
    const at = (chance: number) => drawn.percentiles.find((one) => one.chance === chance)?.cents ?? drawn.mean.value;
    return bid === undefined ? [] : [{ bid, at }];
  });
  const ends = rows.flatMap(({ bid, at }) => [bid.entered, at(0.05), at(0.95)]);
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const room = (high - low) * 0.05 || 1;
  const x = scaleLinear([low - room, high + room], [left, width - right]).nice(ticks);
  const bottom = 16 + rows.length * step;
  return (
    <svg
      viewBox={`0 0 ${width} ${bottom + 48}`}
      role="img"
      aria-label="Range of the drawn cost of each bid, as summed up above and listed in the table below"
    >
      {rows.map(({ bid, at }, row) => {
        const top = 16 + row * step;
        return (
          <g key={bid.id}>
            <text className={styles.letter} x={0} y={top + barHeight / 2} dy="0.35em" fill={bidStroke(bid.index)}>
              {bid.letter}
            </text>
            <rect
              className={styles.band}
              x={x(at(0.05))}
              width={x(at(0.95)) - x(at(0.05))}
              y={top}
              height={barHeight}
            />
            <rect
              className={styles.inner}
              x={x(at(0.25))}
              width={x(at(0.75)) - x(at(0.25))}
              y={top + 5}
              height={barHeight - 10}
            />
            <path className={styles.middle} d={`M${x(at(0.5))} ${top - 3}v${barHeight + 6}`} />
            <path className={styles.entered} d={`M${x(bid.entered)} ${top - 6}v${barHeight + 12}`} />
          </g>
        );
      })}
      <CostAxis scale={x} y={bottom} ticks={ticks} currency={currency} />
    </svg>
  );
}
