import { scaleLinear } from "d3-scale";
import type { CriterionScore } from "#lib/criteria";
import { formatPointSpan, formatPoints } from "#lib/evaluation";
import { bidStroke } from "../../../../_components/bid-letter";
import { HorizontalAxis } from "../../../../_components/chart/axes";
import type { JudgedBid } from "../../_components/judged-bids";
import styles from "./charts.module.css";

const width = 760;
const rowHeight = 54;
const margin = { top: 8, right: 24, bottom: 50, left: 52 };
/** A part narrower than this has no room for its number. */
const leastForNumber = 20;

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
export function ContributionsChart({ bids }: { bids: readonly JudgedBid[] }) {
  const bottom = margin.top + bids.length * rowHeight;
  const x = scaleLinear([0, 100], [margin.left, width - margin.right]);
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
            id={`open-${id}`}
            width="6"
            height="6"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <path d="M0 0v6" stroke={bidStroke(index)} strokeWidth="3" />
          </pattern>
        ))}
      </defs>
      {bids.map((bid, row) => {
        const { id, letter } = bid.evaluated;
        const top = margin.top + row * rowHeight;
        const middle = top + rowHeight / 2;
        return (
          <g key={id}>
            <text
              className={styles.letter}
              x={margin.left - 16}
              y={middle}
              dy="0.34em"
              textAnchor="end"
              fill={bidStroke(bid.index)}
            >
              {letter}
            </text>
            {partsOf(bid)
              .filter(({ from, to }) => to - from > 0)
              .map(({ criterion, number, kind, from, to }) => {
                const size = x(to) - x(from);
                return (
                  <g key={`${criterion} ${kind}`}>
                    <rect
                      className={styles.part}
                      x={x(from)}
                      y={top + 11}
                      width={size}
                      height={rowHeight - 22}
                      fill={kind === "certain" ? bidStroke(bid.index) : `url(#open-${id})`}
                    />
                    {size < leastForNumber ? null : (
                      <text
                        className={kind === "certain" ? styles.numberOnSolid : styles.numberOnHatch}
                        x={x(from) + size / 2}
                        y={middle}
                        dy="0.34em"
                        textAnchor="middle"
                      >
                        {number}
                      </text>
                    )}
                  </g>
                );
              })}
          </g>
        );
      })}
      <HorizontalAxis scale={x} y={bottom} name="points of 100" ticks={10} />
    </svg>
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
