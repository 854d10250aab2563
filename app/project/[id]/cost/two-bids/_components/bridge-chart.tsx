import { scaleLinear } from "d3-scale";
import type { CostBridge } from "#lib/cost";
import { formatMoney } from "#lib/quantity";
import { bidStroke } from "../../../../../_components/bid-letter";
import type { DrawingWidth } from "../../../../../_components/chart/drawing-width";
import { CostAxis } from "../../_components/cost-axis";
import styles from "./bridge-chart.module.css";

/** A bid at one end of the bridge. */
export type BridgeEnd = Readonly<{ letter: string; index: number; isLeast: boolean }>;

type Size = Readonly<{ width: number; left: number; right: number; step: number; ticks: number }>;

const sizes: Readonly<Record<DrawingWidth, Size>> = {
  wide: { width: 760, left: 210, right: 160, step: 34, ticks: 5 },
  narrow: { width: 340, left: 34, right: 34, step: 50, ticks: 2 },
};
const barHeight = 20;

/** A difference with its sign: "+$15,000", "−$4,000". */
export const signed = (cents: number, currency: string): string =>
  `${cents < 0 ? "−" : "+"}${formatMoney(Math.abs(cents), currency)}`;

/** The way from one bid’s present value to the other’s, one category a row; each row begins where the last one ends. */
export function BridgeChart({
  bridge: { start, steps, end },
  first,
  second,
  currency,
  size,
}: {
  bridge: CostBridge;
  first: BridgeEnd;
  second: BridgeEnd;
  currency: string;
  size: DrawingWidth;
}) {
  const { width, left, right, step, ticks } = sizes[size];
  const ends = [start, end, ...steps.flatMap(({ from, to }) => [from, to])];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const room = (high - low) * 0.08 || Math.max(1, Math.abs(high)) * 0.08;
  // the axis does not begin at nothing: what counts here is the difference, and the axis says where it begins
  const x = scaleLinear([low - room, high + room], [left, width - right]).nice(ticks);
  const barTop = (row: number) => 28 + row * step;
  const rows = steps.length + 2;
  const bottom = barTop(rows - 1) + barHeight + 12;
  const words = (row: number) =>
    size === "wide"
      ? { x: left - 12, y: barTop(row) + barHeight / 2, dy: "0.34em", textAnchor: "end" as const }
      : { x: 0, y: barTop(row) - 6, dy: "0", textAnchor: "start" as const };
  const figure = (row: number, cents: number) =>
    size === "wide"
      ? { x: x(cents) + 8, y: barTop(row) + barHeight / 2, dy: "0.34em", textAnchor: "start" as const }
      : { x: width, y: barTop(row) - 6, dy: "0", textAnchor: "end" as const };
  const edge = (bid: BridgeEnd, row: number, cents: number) => (
    <g key={`end ${row}`}>
      <text className={styles.end} fill={bidStroke(bid.index)} {...words(row)}>
        Bid {bid.letter}
      </text>
      <path
        className={styles.total}
        stroke={bidStroke(bid.index)}
        d={`M${x(cents)} ${barTop(row) - 2}v${barHeight + 4}`}
      />
      <text className={styles.total} {...figure(row, cents)}>
        {bid.isLeast ? "at least " : null}
        {formatMoney(cents, currency)}
      </text>
    </g>
  );
  return (
    <svg
      viewBox={`0 0 ${width} ${bottom + 48}`}
      role="img"
      aria-label={`From bid ${first.letter} to bid ${second.letter}, as summed up above and listed in the table below`}
    >
      <defs>
        <pattern id={`more-${size}`} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect width="6" height="6" className={styles.paper} />
          <path d="M0 0v6" className={styles.hatch} />
        </pattern>
      </defs>
      {edge(first, 0, start)}
      {steps.map(({ category, label, from, to, change }, at) => {
        const row = at + 1;
        return (
          <g key={category}>
            <path className={styles.thread} d={`M${x(from)} ${barTop(row) - (step - barHeight)}V${barTop(row)}`} />
            <rect
              className={change < 0 ? styles.less : styles.more}
              fill={change < 0 ? undefined : `url(#more-${size})`}
              x={Math.min(x(from), x(to))}
              width={Math.max(1, Math.abs(x(to) - x(from)))}
              y={barTop(row)}
              height={barHeight}
            />
            <text className={styles.words} {...words(row)}>
              {label}
            </text>
            <text className={styles.words} {...figure(row, Math.max(from, to))}>
              {signed(change, currency)}
            </text>
          </g>
        );
      })}
      <path className={styles.thread} d={`M${x(end)} ${barTop(rows - 1) - (step - barHeight)}V${barTop(rows - 1)}`} />
      {edge(second, rows - 1, end)}
      <CostAxis scale={x} y={bottom} ticks={ticks} currency={currency} />
    </svg>
  );
}
