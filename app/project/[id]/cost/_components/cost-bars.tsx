import { scaleLinear } from "d3-scale";
import { costCategories } from "#lib/cost";
import { bidStroke } from "../../../../_components/bid-letter";
import { DrawingKey, keyHeight } from "../../../../_components/chart/drawing-key";
import type { DrawingWidth } from "../../../../_components/chart/drawing-width";
import { type CategoryLabel, categoryLabels } from "./category-labels";
import { CategoryPatterns, categoryFill } from "./category-patterns";
import { CostAxis } from "./cost-axis";
import styles from "./cost-bars.module.css";
import { type PricedBid, presentValueText } from "./priced-bid";
import { stackedParts } from "./stacked-parts";

type Size = Readonly<{ width: number; left: number; right: number; barStep: number; ticks: number }>;

const sizes: Readonly<Record<DrawingWidth, Size>> = {
  wide: { width: 760, left: 38, right: 132, barStep: 62, ticks: 5 },
  narrow: { width: 340, left: 30, right: 36, barStep: 78, ticks: 3 },
};
const lineHeight = 18;
const barHeight = 30;

/**
 * Present value of every bid by what it is spent on; credits lie left of zero. Wide, the words point into the bars and
 * totals stand behind them; narrow, a key stands above and each total over its bar.
 */
export function CostBars({
  bids,
  currency,
  size,
}: {
  bids: readonly PricedBid[];
  currency: string;
  size: DrawingWidth;
}) {
  const { width, left, right, barStep, ticks } = sizes[size];
  const drawing = `cost-${size}`;
  const bars = bids.map(({ bid }) => stackedParts(bid.cost.entries));
  const ends = bars.flatMap((parts) => parts.flatMap(({ from, to }) => [from, to]));
  const x = scaleLinear([Math.min(0, ...ends), Math.max(1, ...ends)], [left, width - right]);
  const labels = categoryLabels(bars);
  const top = size === "wide" ? labels.length * lineHeight + 24 : keyHeight(labels.length, 1) + 40;
  const barTop = (bar: number) => top + bar * barStep;
  const bottom = barTop(bids.length - 1) + barHeight + 24;
  const words = (bar: number) =>
    size === "wide" ? { y: barTop(bar) + barHeight / 2, dy: "0.35em" } : { y: barTop(bar) - 8, dy: "0" };
  const totalAt = (bar: number) =>
    size === "wide"
      ? { x: x(Math.max(0, ...(bars[bar] ?? []).map(({ to }) => to))) + 10, textAnchor: "start" as const }
      : { x: width, textAnchor: "end" as const };
  return (
    <svg
      viewBox={`0 0 ${width} ${bottom + 48}`}
      role="img"
      aria-label="Present value of each bid by category, as summed up above and listed in the table below"
    >
      <CategoryPatterns drawing={drawing} />
      {bids.map((priced, bar) => (
        <g key={priced.bid.id}>
          <text className={styles.letter} x={0} {...words(bar)} fill={bidStroke(priced.index)}>
            {priced.bid.letter}
          </text>
          {(bars[bar] ?? []).map(({ category, from, to, estimated }) => (
            <g key={category}>
              <rect
                className={styles.part}
                fill={categoryFill(drawing, category)}
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
          <path className={styles.mark} d={`M${x(priced.presentValue)} ${barTop(bar) + barHeight + 9}l-5 8h10z`} />
          <text className={styles.total} {...words(bar)} {...totalAt(bar)}>
            {presentValueText(priced, currency)}
          </text>
        </g>
      ))}
      <path className={styles.zero} d={`M${x(0)} ${top - (size === "wide" ? 12 : 4)}V${bottom}`} />
      {size === "wide" ? (
        <Leaders labels={labels} x={x} barTop={barTop} />
      ) : (
        <DrawingKey
          columns={1}
          width={width}
          entries={labels.map(({ category }) => ({
            label: costCategories[category].label,
            swatch: (box) => <rect {...box} className={styles.part} fill={categoryFill(drawing, category)} />,
          }))}
        />
      )}
      <CostAxis scale={x} y={bottom} ticks={ticks} currency={currency} />
    </svg>
  );
}

/** Each category by name once, on a line of its own, with a line down into the first bar that has it. */
function Leaders({
  labels,
  x,
  barTop,
}: {
  labels: readonly CategoryLabel[];
  x: (cents: number) => number;
  barTop: (bar: number) => number;
}) {
  return labels.map(({ category, bar, at }, line) => {
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
  });
}
