import { scaleLinear } from "d3-scale";
import type { Interval, UnitSystem } from "#lib/quantity";
import { bidStroke } from "../../../../_components/bid-letter";
import { HorizontalAxis } from "../../../../_components/chart/axes";
import { DrawingKey, keyHeight } from "../../../../_components/chart/drawing-key";
import type { DrawingWidth } from "../../../../_components/chart/drawing-width";
import { FilledBand, FillPatterns } from "./fill-patterns";
import styles from "./mass-bars.module.css";
import { type ClassMass, classOrder, classWords } from "./mass-by-class";
import { formatTradeMass, tradeTons, tradeTonsName } from "./trade-mass";

/** The infill of one bid on the whole field; `total` is null where it is not known. */
export type MassBar = Readonly<{
  letter: string;
  index: number;
  parts: readonly ClassMass[];
  total: Interval<"kg"> | null;
}>;

type Size = Readonly<{ width: number; left: number; right: number; rowHeight: number; ticks: number }>;

const sizes: Readonly<Record<DrawingWidth, Size>> = {
  wide: { width: 760, left: 40, right: 170, rowHeight: 50, ticks: 6 },
  narrow: { width: 340, left: 30, right: 20, rowHeight: 60, ticks: 4 },
};
const thickness = 26;
const wordsRoom = 54;
const keyColumns = 2;

/**
 * One horizontal bar per bid, in parts by what the grains are made of, with its total beside it. Narrow, a key stands
 * above for the words at the parts, and each total over its bar.
 */
export function MassBars({ bars, size, units }: { bars: readonly MassBar[]; size: DrawingWidth; units: UnitSystem }) {
  const { width, left, right, rowHeight, ticks } = sizes[size];
  const id = `bar-${size}`;
  const drawn = classOrder.filter((name) => bars.some(({ parts }) => parts.some((part) => part.class === name)));
  const top = size === "wide" ? 8 : keyHeight(drawn.length, keyColumns) + 30;
  const bottom = top + bars.length * rowHeight;
  const greatest = Math.max(
    1,
    ...bars.flatMap(({ total, parts }) => [
      total === null || !Number.isFinite(total.high) ? 0 : tradeTons(total.high, units),
      parts.reduce((sum, { mass }) => sum + tradeTons(mass, units), 0),
    ]),
  );
  const x = scaleLinear([0, greatest], [left, width - right]);
  return (
    <svg
      viewBox={`0 0 ${width} ${bottom + 48}`}
      role="img"
      aria-label="Total infill mass of each bid by class of material, as summed up above and listed in the table below"
    >
      <FillPatterns id={id} />
      {size === "wide" ? null : (
        <DrawingKey
          columns={keyColumns}
          width={width}
          entries={drawn.map((name) => ({
            label: classWords[name],
            swatch: (box) => <FilledBand id={id} fill={name} {...box} />,
          }))}
        />
      )}
      {bars.map((bar, row) => (
        <Bar key={bar.letter} id={id} bar={bar} x={x} y={top + row * rowHeight} size={size} units={units} />
      ))}
      <HorizontalAxis scale={x} y={bottom} name={tradeTonsName(units)} ticks={ticks} />
    </svg>
  );
}

function Bar({
  id,
  bar: { letter, index, parts, total },
  x,
  y,
  size,
  units,
}: {
  id: string;
  bar: MassBar;
  x: (tons: number) => number;
  y: number;
  size: DrawingWidth;
  units: UnitSystem;
}) {
  const ends = parts.map((_, place) =>
    parts.slice(0, place + 1).reduce((sum, { mass }) => sum + tradeTons(mass, units), 0),
  );
  const widths = ends.map((end, place) => x(end) - x(ends[place - 1] ?? 0));
  // The last words may run on to the right; those before them need their own part's room.
  const hasRoom = (place: number) =>
    size === "wide" &&
    (place === parts.length - 1
      ? widths.slice(0, place).every((part) => part >= wordsRoom)
      : (widths[place] ?? 0) >= wordsRoom);
  const middle = y + thickness / 2;
  const reach = Math.max(
    x(ends.at(-1) ?? 0),
    total !== null && Number.isFinite(total.high) ? x(tradeTons(total.high, units)) : 0,
  );
  const totalAt = size === "wide" ? { x: reach + 10, y: middle, dy: "0.34em" } : { x: x(0), y: y - 7 };
  return (
    <g className={styles.bar}>
      <text x="6" y={middle} dy="0.34em" fill={bidStroke(index)} className={styles.letter}>
        {letter}
      </text>
      {parts.map((part, place) => {
        const from = x(ends[place - 1] ?? 0);
        const to = x(ends[place] ?? 0);
        return (
          <g key={part.class}>
            <FilledBand id={id} fill={part.class} x={from} width={to - from} y={y} height={thickness} />
            {hasRoom(place) ? (
              <text x={from + 4} y={y + thickness + 14} className={styles.part}>
                {classWords[part.class]}
              </text>
            ) : null}
          </g>
        );
      })}
      {total === null ||
      !(total.low < total.high) ||
      !Number.isFinite(total.high) ||
      !Number.isFinite(total.low) ? null : (
        <path
          d={`M${x(tradeTons(total.low, units))} ${middle}H${x(tradeTons(total.high, units))}m0 -7v14M${x(tradeTons(total.low, units))} ${middle - 7}v14`}
          className={styles.range}
        />
      )}
      <text {...totalAt} className={styles.total}>
        {total === null ? "not known" : formatTradeMass(total, units)}
      </text>
    </g>
  );
}
