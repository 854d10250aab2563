import { formatPointSpan, formatPoints, type ValuedBid } from "#lib/evaluation";
import type { CurrencyCode } from "#lib/quantity";
import type { NamedBid } from "./named-bid";
import styles from "./robustness.module.css";
import { costWords, standingWords } from "./value-words";

/** Points, cost and standing of each bid. */
export function ValueTable({
  valued,
  bids,
  currency,
}: {
  valued: readonly ValuedBid[];
  bids: readonly NamedBid[];
  currency: CurrencyCode;
}) {
  return (
    <table>
      <caption>Points without cost, and what they cost</caption>
      <thead>
        <tr>
          <th scope="col">Bid</th>
          <th scope="col" className="number">
            Points as shown
          </th>
          <th scope="col" className="number">
            From least to most
          </th>
          <th scope="col" className="number">
            Levelled cost
          </th>
          <th scope="col">Standing</th>
        </tr>
      </thead>
      <tbody>
        {valued.map(({ bid, points, least, most, cost, efficient }) => (
          <tr key={bid}>
            <th scope="row" className={styles.bid}>
              Bid {bids.find(({ id }) => id === bid)?.letter}
            </th>
            <td className="number">{formatPoints(points)}</td>
            <td className="number">{formatPointSpan({ low: least, high: most })}</td>
            <td className="number">{costWords(cost, currency)}</td>
            <td>{standingWords[efficient]}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
