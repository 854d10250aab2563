import { scaleLinear } from "d3-scale";
import { costCategories } from "#lib/cost";
import { formatMoney } from "#lib/quantity";
import { bidStroke } from "../../../../_components/bid-letter";
import { HorizontalAxis } from "../../../../_components/chart/axes";
import { categoryLabels } from "./category-labels";
import { CategoryPatterns, categoryFill } from "./category-patterns";
import styles from "./cost-bars.module.css";
import type { PricedBid } from "./priced-bid";
import { stackedParts } from "./stacked-parts";

const width = 760;
const left = 30;
const right = 132;
const lineHeight = 18;
const barHeight = 30;
const barStep = 62;

/** Present value of every bid by what it is spent on; credits lie left of zero. */
export function CostBars({ bids, currency }: { bids: readonly PricedBid[]; currency: string }) {
  const bars = bids.map(({ bid }) => stackedParts(bid.cost.entries));
  const ends = bars.flatMap((parts) => parts.flatMap(({ from, to }) => [from, to]));
  const x = scaleLinear([Math.min(0, ...ends), Math.max(1, ...ends)], [left + 8, width - right]);
  const labels = categoryLabels(bars);
  const top = labels.length * lineHeight + 24;
  const barTop = (bar: number) => top + bar * barStep;
  const bottom = barTop(bids.length) - 8;
  return (
    <svg
      viewBox={`0 0 ${width} ${bottom + 48}`}
      role="img"
      aria-label="Present value of each bid by category, as summed up above and listed in the table below"
    >
      <CategoryPatterns />
      {bids.map(({ bid, index, presentValue }, bar) => (
        <g key={bid.id}>
          <text className={styles.letter} x={0} y={barTop(bar) + barHeight / 2} dy="0.35em" fill={bidStroke(index)}>
            {bid.letter}
          </text>
          {(bars[bar] ?? []).map(({ category, from, to, estimated }) => (
            <g key={category}>
              <rect
                className={styles.part}
                fill={categoryFill(category)}
                x={x(Math.min(from, to))}
                width={Math.abs(x(to) - x(from))}
                y={barTop(bar)}
                height={barHeight}
              />
              {estimated.from === estimated.to ? null : (
                <path
                  className={styles.estimated}
                  d={`M${x(estimated.from)} ${barTop(bar) + barHeight + 5}H${x(estimated.to)}`}
                />
              )}
            </g>
          ))}
          <path className={styles.mark} d={`M${x(presentValue)} ${barTop(bar) + barHeight + 9}l-5 8h10z`} />
          <text
            className={styles.total}
            x={x(Math.max(0, ...(bars[bar] ?? []).map(({ to }) => to))) + 10}
            y={barTop(bar) + barHeight / 2}
            dy="0.35em"
          >
            {formatMoney(presentValue, currency)}
          </text>
        </g>
      ))}
      <path className={styles.zero} d={`M${x(0)} ${top - 12}V${bottom}`} />
      {labels.map(({ category, bar, at }, line) => {
        const baseline = (line + 1) * lineHeight;
        const leader = `M${x(at)} ${baseline + 4}V${barTop(bar)}`;
        return (
          <g key={category}>
            {bar === 0 ? null : <path className={styles.halo} d={leader} />}
            <path className={styles.leader} d={leader} />
            <text className={styles.words} x={x(at) - 2} y={baseline}>
              {costCategories[category].label}
            </text>
          </g>
        );
      })}
      <HorizontalAxis
        scale={x}
        y={bottom}
        name="Present value"
        ticks={5}
        format={(cents) => formatMoney(cents, currency)}
      />
    </svg>
  );
}
