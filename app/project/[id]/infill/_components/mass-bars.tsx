import { scaleLinear } from "d3-scale";
import type { Interval, UnitSystem } from "#lib/quantity";
import { bidStroke } from "../../../../_components/bid-letter";
import { HorizontalAxis } from "../../../../_components/chart/axes";
import { FilledBand, FillPatterns } from "./fill-patterns";
import styles from "./mass-bars.module.css";
import { type ClassMass, classWords } from "./mass-by-class";
import { formatTradeMass, tradeTons, tradeTonsName } from "./trade-mass";

/** The infill of one bid on the whole field; `total` is null where it is not known. */
export type MassBar = Readonly<{
  letter: string;
  index: number;
  parts: readonly ClassMass[];
  total: Interval<"kg"> | null;
}>;

const width = 860;
const left = 40;
const right = 170;
const rowHeight = 50;
const thickness = 26;
const top = 8;
const wordsRoom = 52;

/** One horizontal bar per bid, in parts by what the grains are made of, with its total beside it. */
export function MassBars({ bars, units }: { bars: readonly MassBar[]; units: UnitSystem }) {
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
      className={styles.bars}
      viewBox={`0 0 ${width} ${bottom + 48}`}
      role="img"
      aria-label="Total infill mass of each bid by class of material, as summed up above and listed in the table below"
    >
      <FillPatterns id="bar" />
      {bars.map((bar, row) => (
        <Bar key={bar.letter} bar={bar} x={x} y={top + row * rowHeight} units={units} />
      ))}
      <HorizontalAxis scale={x} y={bottom} name={tradeTonsName(units)} ticks={6} />
    </svg>
  );
}

function Bar({
  bar: { letter, index, parts, total },
  x,
  y,
  units,
}: {
  bar: MassBar;
  x: (tons: number) => number;
  y: number;
  units: UnitSystem;
}) {
  const ends = parts.map((_, place) =>
    parts.slice(0, place + 1).reduce((sum, { mass }) => sum + tradeTons(mass, units), 0),
  );
  const widths = ends.map((end, place) => x(end) - x(ends[place - 1] ?? 0));
  // The last words may run on to the right; those before them need their own part's room.
  const hasRoom = (place: number) =>
    place === parts.length - 1
      ? widths.slice(0, place).every((part) => part >= wordsRoom)
      : (widths[place] ?? 0) >= wordsRoom;
  const middle = y + thickness / 2;
  const reach = Math.max(
    x(ends.at(-1) ?? 0),
    total !== null && Number.isFinite(total.high) ? x(tradeTons(total.high, units)) : 0,
  );
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
            <FilledBand id="bar" fill={part.class} x={from} width={to - from} y={y} height={thickness} />
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
      <text x={reach + 10} y={middle} dy="0.34em" className={styles.total}>
        {total === null ? "not known" : formatTradeMass(total, units)}
      </text>
    </g>
  );
}
