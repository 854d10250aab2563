import { scaleLinear } from "d3-scale";
import { formatMoney } from "#lib/quantity";
import { HorizontalAxis } from "../../../../../_components/chart/axes";
import type { DrawingWidth } from "../../../../../_components/chart/drawing-width";
import { wrappedWords } from "../../../../../_components/chart/wrapped-words";
import type { SwingBar } from "./swing-bars";
import styles from "./uncertainty.module.css";

type Size = Readonly<{ width: number; left: number; right: number; ticks: number; longest: number; step: number }>;

const sizes: Readonly<Record<DrawingWidth, Size>> = {
  wide: { width: 760, left: 240, right: 40, ticks: 5, longest: 32, step: 34 },
  narrow: { width: 340, left: 34, right: 34, ticks: 3, longest: 48, step: 46 },
};
const barHeight = 16;
const lineHeight = 15;

/** What each uncertain figure alone does to a bid's cost, the widest at the top. */
export function SwingChart({
  bars,
  ends: [least, most],
  letter,
  currency,
  size,
}: {
  bars: readonly SwingBar[];
  /** Of all bids, in cents: their drawings share one scale. */
  ends: readonly [number, number];
  letter: string;
  currency: string;
  size: DrawingWidth;
}) {
  const { width, left, right, ticks, longest, step } = sizes[size];
  const x = scaleLinear([least, most === least ? least + 1 : most], [left, width - right]).nice(ticks);
  const top = size === "wide" ? 8 : 26;
  const bottom = top + bars.length * step;
  const signed = (cents: number) => `${cents > 0 ? "+" : ""}${formatMoney(cents, currency)}`;
  return (
    <svg
      viewBox={`0 0 ${width} ${bottom + 48}`}
      role="img"
      aria-label={`What each uncertain figure does to the cost of bid ${letter}, as summed up above and listed in the table below`}
    >
      {bars.map((bar, row) => {
        const y = top + row * step;
        return (
          <g key={bar.input}>
            {byLength(bar).map(({ end, cents }) => (
              <rect
                key={end}
                className={styles[end]}
                x={x(Math.min(0, cents))}
                width={Math.abs(x(cents) - x(0))}
                y={y}
                height={barHeight}
              />
            ))}
          </g>
        );
      })}
      <path className={styles.middle} d={`M${x(0)} ${top - 4}V${bottom}`} />
      {bars.map((bar, row) => {
        const y = top + row * step;
        const lines = wrappedWords(bar.label, longest);
        return (
          <g key={bar.input}>
            {lines.map((words, line) => (
              <text
                key={words}
                className={styles.words}
                x={size === "wide" ? left - 14 : 0}
                y={size === "wide" ? y + barHeight / 2 + (line - (lines.length - 1) / 2) * lineHeight : y - 8}
                dy={size === "wide" ? "0.35em" : "0"}
                textAnchor={size === "wide" ? "end" : "start"}
              >
                {words}
              </text>
            ))}
          </g>
        );
      })}
      <HorizontalAxis
        scale={x}
        y={bottom}
        name="more or less than as entered"
        ticks={ticks}
        format={(cents) => (cents === 0 ? "0" : signed(cents))}
      />
    </svg>
  );
}

/** Both ends of a bar, the longer first, so that two on one side are both seen. */
const byLength = ({ low, high }: SwingBar) =>
  (
    [
      { end: "lowEnd", cents: low },
      { end: "highEnd", cents: high },
    ] as const
  ).toSorted((one, other) => Math.abs(other.cents) - Math.abs(one.cents));
