import { scaleLinear } from "d3-scale";
import type { LevelledCost, ValuedBid } from "#lib/evaluation";
import { type CurrencyCode, formatMoney } from "#lib/quantity";
import { bidStroke } from "../../../../../_components/bid-letter";
import { HorizontalAxis, VerticalAxis } from "../../../../../_components/chart/axes";
import type { DrawingWidth } from "../../../../../_components/chart/drawing-width";
import { spreadLabels } from "../../../../../_components/chart/spread-labels";
import type { NamedBid } from "./named-bid";
import styles from "./robustness.module.css";

const sizes: Readonly<
  Record<DrawingWidth, Readonly<{ width: number; height: number; left: number; right: number; ticks: number }>>
> = {
  wide: { width: 760, height: 360, left: 56, right: 60, ticks: 6 },
  narrow: { width: 340, height: 320, left: 42, right: 34, ticks: 2 },
};
const top = 34;
const bottomMargin = 52;
const radius = 6;

type Priced = ValuedBid & Readonly<{ cost: Exclude<LevelledCost, { kind: "not-known" }> }>;

const isPriced = (bid: ValuedBid): bid is Priced => bid.cost.kind !== "not-known";

/** Points without cost against levelled cost: up is more for the money, left is less money. */
export function ValuePlot({
  valued,
  bids,
  currency,
  size,
}: {
  valued: readonly ValuedBid[];
  bids: readonly NamedBid[];
  currency: CurrencyCode;
  size: DrawingWidth;
}) {
  const { width, height, left, right, ticks } = sizes[size];
  const priced = valued
    .filter(isPriced)
    .flatMap((one) => bids.filter(({ id }) => id === one.bid).map((bid) => ({ ...one, ...bid })));
  const costs = priced.map(({ cost }) => cost.cents);
  const [least, most] = [Math.min(...costs), Math.max(...costs)];
  const room = (most - least) * 0.12 || Math.max(1, most * 0.05);
  const bottom = height - bottomMargin;
  const x = scaleLinear([least - room, most + room], [left, width - right]);
  const y = scaleLinear([0, 100], [bottom, top]);
  const edge = priced
    .filter(({ efficient }) => efficient === "in" || efficient === "not-settled")
    .toSorted((one, other) => one.cost.cents - other.cost.cents);
  const letters = spreadLabels(
    priced.map(({ points }) => y(100 * points)),
    17,
    { from: top, to: bottom },
  );
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label="Points and levelled cost of each bid, as summed up above and listed in the table below"
    >
      <VerticalAxis scale={y} from={left} to={width - right} name="points without cost" ticks={5} />
      <HorizontalAxis
        scale={x}
        y={bottom}
        name="levelled cost, present value"
        ticks={ticks}
        format={(cents) => formatMoney(cents, currency)}
      />
      {edge.length < 2 ? null : (
        <path
          className={styles.efficient}
          d={edge
            .map(({ cost, points }, at) =>
              at === 0 ? `M${x(cost.cents)} ${y(100 * points)}` : `H${x(cost.cents)}V${y(100 * points)}`,
            )
            .join("")}
        />
      )}
      {priced.map(({ id, letter, index, cost, points, least: low, most: high, efficient }, place) => {
        const [cx, cy] = [x(cost.cents), y(100 * points)];
        return (
          <g key={id} stroke={bidStroke(index)}>
            {high > low ? <path className={styles.span} d={`M${cx} ${y(100 * low)}V${y(100 * high)}`} /> : null}
            {cost.kind === "at-least" ? (
              <path className={styles.span} d={`M${cx + radius} ${cy}h24m-7 -5l7 5l-7 5`} />
            ) : null}
            {efficient === "out" ? (
              <path className={styles.mark} d={`M${cx - 6} ${cy - 6}l12 12m0 -12l-12 12`} />
            ) : (
              <circle
                className={`${styles.mark} ${efficient === "in" ? "" : styles.open}`}
                cx={cx}
                cy={cy}
                r={radius}
                {...(efficient === "in" ? { fill: bidStroke(index) } : {})}
              />
            )}
            <text
              className={styles.plate}
              x={cx - radius - 7}
              y={letters[place] ?? cy}
              dy="0.34em"
              textAnchor="end"
              fill={bidStroke(index)}
            >
              {letter}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
