import { scaleLinear } from "d3-scale";
import type { RankAcceptability } from "#lib/robustness";
import { bidStroke } from "../../../../../_components/bid-letter";
import { HorizontalAxis } from "../../../../../_components/chart/axes";
import { DrawingKey, keyHeight } from "../../../../../_components/chart/drawing-key";
import type { DrawingWidth } from "../../../../../_components/chart/drawing-width";
import charts from "../../_components/charts.module.css";
import type { NamedBid } from "./named-bid";
import { drawnThings } from "./rank-words";
import styles from "./robustness.module.css";

const sizes: Readonly<
  Record<DrawingWidth, Readonly<{ width: number; left: number; right: number; ticks: number; columns: number }>>
> = {
  wide: { width: 760, left: 40, right: 40, ticks: 10, columns: 4 },
  narrow: { width: 340, left: 30, right: 16, ticks: 5, columns: 2 },
};
const step = 42;
const barHeight = 28;
/** What a number takes along the bar. */
const roomForNumber = 26;

/** Places that are told apart in the drawing; all later ones are one part. The table has each. */
const parts = ["first", "second", "third", "later"] as const;
type Part = (typeof parts)[number];

const labels: Readonly<Record<Part, string>> = {
  first: "first",
  second: "second",
  third: "third",
  later: "a later place",
};

function partsOf(places: readonly number[]): readonly Readonly<{ part: Part; from: number; to: number }>[] {
  let end = 0;
  return parts.slice(0, Math.max(1, Math.min(places.length, parts.length))).map((part, at) => {
    const from = end;
    end += part === "later" ? places.slice(at).reduce((sum, place) => sum + place, 0) : (places[at] ?? 0);
    return { part, from, to: Math.min(1, end) };
  });
}

/** One bar a bid: in how many of 100 sets of weights it takes each place. */
export function AcceptabilityChart({
  outcome,
  bids,
  size,
}: {
  outcome: RankAcceptability;
  bids: readonly NamedBid[];
  size: DrawingWidth;
}) {
  const { width, left, right, ticks, columns } = sizes[size];
  const rows = bids.flatMap((bid) =>
    outcome.bids.filter((ranks) => ranks.bid === bid.id).map((ranks) => ({ bid, ranks })),
  );
  const shown = parts.slice(0, Math.min(rows.length, parts.length));
  const top = keyHeight(shown.length, columns) + 12;
  const bottom = top + rows.length * step;
  const x = scaleLinear([0, 100], [left, width - right]);
  const mark = `${outcome.weights.kind}-${size}`;
  return (
    <svg
      viewBox={`0 0 ${width} ${bottom + 48}`}
      role="img"
      aria-label="Places of each bid over the sets of weights, as summed up above and listed in the table below"
    >
      <defs>
        {rows.map(({ bid: { id, index } }) => (
          <Patterns key={id} mark={`${mark}-${id}`} stroke={bidStroke(index)} />
        ))}
        <Patterns mark={`${mark}-key`} stroke="var(--ink)" />
      </defs>
      <DrawingKey
        columns={columns}
        width={width}
        entries={shown.map((part) => ({
          label: labels[part],
          swatch: (at) => <rect {...at} className={styles.part} fill={fillOf(part, `${mark}-key`, "var(--ink)")} />,
        }))}
      />
      {rows.map(({ bid, ranks }, row) => {
        const middle = top + row * step + step / 2;
        return (
          <g key={bid.id}>
            <text
              className={charts.letter}
              x={left - 12}
              y={middle}
              dy="0.34em"
              textAnchor="end"
              fill={bidStroke(bid.index)}
            >
              {bid.letter}
            </text>
            {partsOf(ranks.places.map(({ value }) => value)).map(({ part, from, to }) => (
              <g key={part}>
                <rect
                  className={styles.part}
                  x={x(100 * from)}
                  y={middle - barHeight / 2}
                  width={x(100 * to) - x(100 * from)}
                  height={barHeight}
                  fill={fillOf(part, `${mark}-${bid.id}`, bidStroke(bid.index))}
                />
                {x(100 * to) - x(100 * from) < roomForNumber ? null : (
                  <text
                    className={part === "first" ? charts.numberOnSolid : charts.numberOnHatch}
                    x={(x(100 * from) + x(100 * to)) / 2}
                    y={middle}
                    dy="0.34em"
                    textAnchor="middle"
                  >
                    {Math.round(100 * (to - from))}
                  </text>
                )}
              </g>
            ))}
          </g>
        );
      })}
      <HorizontalAxis scale={x} y={bottom + 4} name={`of 100 ${drawnThings(outcome.weights)}`} ticks={ticks} />
    </svg>
  );
}

const fillOf = (part: Part, mark: string, stroke: string): string =>
  part === "first" ? stroke : part === "later" ? "none" : `url(#${part}-${mark})`;

/** Second places are hatched, third places dotted, later ones left blank. */
function Patterns({ mark, stroke }: { mark: string; stroke: string }) {
  return (
    <>
      <pattern id={`second-${mark}`} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path d="M1.5 0v7" stroke={stroke} strokeWidth="3" />
      </pattern>
      <pattern id={`third-${mark}`} width="7" height="7" patternUnits="userSpaceOnUse">
        <circle cx="3.5" cy="3.5" r="1.4" fill={stroke} />
      </pattern>
    </>
  );
}
