import { type ScaleLinear, scaleLinear } from "d3-scale";
import type { CriterionScore } from "#lib/criteria";
import { formatPointSpan, formatPoints } from "#lib/evaluation";
import { bidStroke } from "../../../../_components/bid-letter";
import { HorizontalAxis } from "../../../../_components/chart/axes";
import type { DrawingWidth } from "../../../../_components/chart/drawing-width";
import { spreadLabels } from "../../../../_components/chart/spread-labels";
import type { JudgedBid } from "../../_components/judged-bids";
import styles from "./charts.module.css";

const sizes: Readonly<Record<DrawingWidth, Readonly<{ width: number; left: number; ticks: number }>>> = {
  wide: { width: 760, left: 52, ticks: 10 },
  narrow: { width: 340, left: 32, ticks: 5 },
};
const rowHeight = 62;
const barHeight = 32;
const margin = { top: 0, right: 16, bottom: 50 };
/** What a number takes along the bar. */
const roomForNumber = (number: number) => 8 * String(number).length + 5;
/** A part narrower than this is drawn, but is too thin to point at. */
const leastToPointAt = 2;

type Part = Readonly<{ criterion: string; number: number; kind: "certain" | "open"; from: number; to: number }>;

const weighing = ({ evaluated }: JudgedBid): readonly CriterionScore[] =>
  evaluated.score.criteria.filter(({ share }) => share > 0);

/** What is certain first, criterion by criterion, then what is open: the ends are the least and the most of the total. */
function partsOf(bid: JudgedBid): readonly Part[] {
  const scores = weighing(bid);
  const widths = (["certain", "open"] as const).flatMap((kind) =>
    scores.map(({ criterion, contribution: { low, high } }, index) => ({
      criterion: criterion.id,
      number: index + 1,
      kind,
      width: (kind === "certain" ? low : high - low) * 100,
    })),
  );
  let end = 0;
  return widths.map(({ width: part, ...rest }) => {
    const from = end;
    end += part;
    return { ...rest, from, to: end };
  });
}

/** What each criterion adds to each bid: solid for certain, hatched for what is open. */
export function ContributionsChart({ bids, size }: { bids: readonly JudgedBid[]; size: DrawingWidth }) {
  const { width, left, ticks } = sizes[size];
  const bottom = margin.top + bids.length * rowHeight;
  const x = scaleLinear([0, 100], [left, width - margin.right]);
  return (
    <svg
      viewBox={`0 0 ${width} ${bottom + margin.bottom}`}
      role="img"
      aria-label="Points that each criterion adds to each bid, as listed in the table below"
    >
      <defs>
        {bids.map(({ evaluated: { id }, index }) => (
          <pattern
            key={id}
            id={`open-${id}-${size}`}
            width="6"
            height="6"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <path d="M0 0v6" stroke={bidStroke(index)} strokeWidth="3" />
          </pattern>
        ))}
      </defs>
      {bids.map((bid, row) => (
        <Bar
          key={bid.evaluated.id}
          bid={bid}
          middle={margin.top + row * rowHeight + rowHeight - barHeight / 2 - 8}
          x={x}
          openFill={`url(#open-${bid.evaluated.id}-${size})`}
        />
      ))}
      <HorizontalAxis scale={x} y={bottom} name="points of 100" ticks={ticks} />
    </svg>
  );
}

/** One bid's bar. A number stands in its part, or above it with a line to it where the part is too narrow. */
function Bar({
  bid,
  middle,
  x,
  openFill,
}: {
  bid: JudgedBid;
  middle: number;
  x: ScaleLinear<number, number>;
  openFill: string;
}) {
  const [left = 0, right = 0] = x.range();
  const parts = partsOf(bid)
    .map(({ from, to, ...rest }) => ({ ...rest, from: x(from), width: x(to) - x(from) }))
    .filter(({ width }) => width > 0);
  const above = parts.filter(({ number, width }) => width >= leastToPointAt && width < roomForNumber(number));
  const places = spreadLabels(
    above.map(({ from, width }) => from + width / 2),
    above.map(({ number }) => roomForNumber(number)),
    { from: left + 6, to: right - 6 },
  );
  const top = middle - barHeight / 2;
  return (
    <g>
      <text className={styles.letter} x={left - 14} y={middle} dy="0.34em" textAnchor="end" fill={bidStroke(bid.index)}>
        {bid.evaluated.letter}
      </text>
      {parts.map(({ criterion, number, kind, from, width }) => (
        <g key={`${criterion} ${kind}`}>
          <rect
            className={styles.part}
            x={from}
            y={top}
            width={width}
            height={barHeight}
            fill={kind === "certain" ? bidStroke(bid.index) : openFill}
          />
          {width < roomForNumber(number) ? null : (
            <text
              className={kind === "certain" ? styles.numberOnSolid : styles.numberOnHatch}
              x={from + width / 2}
              y={middle}
              dy="0.34em"
              textAnchor="middle"
            >
              {number}
            </text>
          )}
        </g>
      ))}
      {above.map(({ criterion, number, kind, from, width }, position) => (
        <g key={`${criterion} ${kind}`}>
          <path
            className={styles.leader}
            d={`M${from + width / 2} ${top + 3}V${top - 1}L${places[position]} ${top - 6}`}
          />
          <text className={styles.numberAbove} x={places[position]} y={top - 9} textAnchor="middle">
            {number}
          </text>
        </g>
      ))}
    </g>
  );
}

/** Which number in the drawing is which criterion. */
export function ContributionsKey({ bids }: { bids: readonly JudgedBid[] }) {
  const [first] = bids;
  if (first === undefined) return null;
  return (
    <ol className={styles.key}>
      {weighing(first).map(({ criterion }) => (
        <li key={criterion.id}>{criterion.label}</li>
      ))}
    </ol>
  );
}

export function ContributionsTable({ bids }: { bids: readonly JudgedBid[] }) {
  const [first] = bids;
  const rows = first === undefined ? [] : weighing(first);
  return (
    <table>
      <caption>Points added by each criterion</caption>
      <thead>
        <tr>
          <th scope="col">Criterion</th>
          <th scope="col">At most</th>
          {bids.map(({ evaluated: { id, letter } }) => (
            <th key={id} scope="col">
              Bid {letter}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ criterion, share }, row) => (
          <tr key={criterion.id}>
            <th scope="row">
              {row + 1}. {criterion.label}
            </th>
            <td className="number">{formatPoints(share)}</td>
            {bids.map((bid) => {
              const score = weighing(bid)[row];
              return (
                <td key={bid.evaluated.id} className="number">
                  {score === undefined ? "" : formatPointSpan(score.contribution)}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
