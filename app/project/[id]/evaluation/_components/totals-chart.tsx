import { scaleLinear } from "d3-scale";
import { formatPointSpan, formatPoints } from "#lib/evaluation";
import { bidStroke } from "../../../../_components/bid-letter";
import { HorizontalAxis } from "../../../../_components/chart/axes";
import type { JudgedBid } from "../../_components/judged-bids";
import styles from "./charts.module.css";

const width = 760;
const rowHeight = 54;
const margin = { top: 8, right: 24, bottom: 50, left: 52 };

/** One bar a bid from the least to the most it may have, with a mark at the likely total. */
export function TotalsChart({ bids }: { bids: readonly JudgedBid[] }) {
  const bottom = margin.top + bids.length * rowHeight;
  const x = scaleLinear([0, 100], [margin.left, width - margin.right]);
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
        const words =
          total.likely === null
            ? formatPointSpan(total)
            : `${formatPointSpan(total)}, likely ${formatPoints(total.likely)}`;
        const beside =
          high < width - margin.right - 200
            ? { at: high + 10, anchor: "start" as const }
            : { at: low - 10, anchor: "end" as const };
        return (
          <g key={id}>
            <path className={styles.hairline} d={`M${margin.left} ${top + rowHeight / 2}H${width - margin.right}`} />
            <text
              className={styles.letter}
              x={margin.left - 16}
              y={top + rowHeight / 2}
              dy="0.34em"
              textAnchor="end"
              fill={bidStroke(index)}
            >
              {letter}
            </text>
            <rect
              className={styles.span}
              x={low}
              y={top + 15}
              width={Math.max(high - low, 2)}
              height={rowHeight - 30}
              fill={bidStroke(index)}
              stroke={bidStroke(index)}
            />
            {total.likely === null ? null : (
              <path
                className={styles.likely}
                d={`M${x(total.likely * 100)} ${top + 8}v${rowHeight - 16}`}
                stroke={bidStroke(index)}
              />
            )}
            <text className={styles.words} x={beside.at} y={top + rowHeight / 2} dy="0.34em" textAnchor={beside.anchor}>
              {words}
              {score.standing === "fails a gate" ? ", fails a gate" : ""}
            </text>
          </g>
        );
      })}
      <HorizontalAxis scale={x} y={bottom} name="points of 100" ticks={10} />
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
