import { scaleLinear } from "d3-scale";
import { formatPointSpan, formatPoints } from "#lib/evaluation";
import { bidStroke } from "../../../../_components/bid-letter";
import { HorizontalAxis } from "../../../../_components/chart/axes";
import { type DrawingWidth, roomForWords } from "../../../../_components/chart/drawing-width";
import type { JudgedBid } from "../../_components/judged-bids";
import styles from "./charts.module.css";

const sizes: Readonly<Record<DrawingWidth, Readonly<{ width: number; left: number; ticks: number }>>> = {
  wide: { width: 760, left: 52, ticks: 10 },
  narrow: { width: 340, left: 32, ticks: 5 },
};
const rowHeight = 58;
const wordsSize = 14;
const margin = { top: 0, right: 16, bottom: 50 };

/** One bar a bid from the least to the most it may have, with a mark at the likely total and its words above. */
export function TotalsChart({ bids, size }: { bids: readonly JudgedBid[]; size: DrawingWidth }) {
  const { width, left, ticks } = sizes[size];
  const bottom = margin.top + bids.length * rowHeight;
  const x = scaleLinear([0, 100], [left, width - margin.right]);
  return (
    <svg
      viewBox={`0 0 ${width} ${bottom + margin.bottom}`}
      role="img"
      aria-label="Total of each bid as a range, as summed up above and listed in the table below"
    >
      {bids.map(({ evaluated: { id, letter, score }, index }, row) => {
        const top = margin.top + row * rowHeight;
        const { total } = score;
        if (total === null) return null;
        const [low, high] = [x(total.low * 100), x(total.high * 100)];
        const words = [
          formatPointSpan(total),
          ...(total.likely === null ? [] : [`likely ${formatPoints(total.likely)}`]),
          ...(score.standing === "fails a gate" ? ["fails a gate"] : []),
        ].join(", ");
        const middle = top + 39;
        return (
          <g key={id}>
            <path className={styles.hairline} d={`M${left} ${middle}H${width - margin.right}`} />
            <text
              className={styles.letter}
              x={left - 14}
              y={middle}
              dy="0.34em"
              textAnchor="end"
              fill={bidStroke(index)}
            >
              {letter}
            </text>
            <rect
              className={styles.span}
              x={low}
              y={middle - 12}
              width={Math.max(high - low, 2)}
              height={24}
              fill={bidStroke(index)}
              stroke={bidStroke(index)}
            />
            {total.likely === null ? null : (
              <path
                className={styles.likely}
                d={`M${x(total.likely * 100)} ${middle - 15}v30`}
                stroke={bidStroke(index)}
              />
            )}
            <text
              className={styles.words}
              x={Math.max(left, Math.min(low, width - roomForWords(words, wordsSize)))}
              y={middle - 20}
            >
              {words}
            </text>
          </g>
        );
      })}
      <HorizontalAxis scale={x} y={bottom} name="points of 100" ticks={ticks} />
    </svg>
  );
}

export function TotalsTable({ bids }: { bids: readonly JudgedBid[] }) {
  return (
    <table>
      <caption>Totals in points of 100</caption>
      <thead>
        <tr>
          <th scope="col">Bid</th>
          <th scope="col">Least</th>
          <th scope="col">Likely</th>
          <th scope="col">Most</th>
        </tr>
      </thead>
      <tbody>
        {bids.map(({ evaluated: { id, letter, score } }) => (
          <tr key={id}>
            <th scope="row">{letter}</th>
            <td className="number">{score.total === null ? "no total" : formatPoints(score.total.low)}</td>
            <td className="number">{score.total?.likely == null ? "not known" : formatPoints(score.total.likely)}</td>
            <td className="number">{score.total === null ? "no total" : formatPoints(score.total.high)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
