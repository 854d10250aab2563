import type { RankAcceptability } from "#lib/robustness";
import { Scroller } from "../../../../../_components/scroller";
import { DrawnFigure } from "./drawn-figure";
import type { NamedBid } from "./named-bid";
import { drawnThings } from "./rank-words";
import styles from "./robustness.module.css";

/** Bid by bid, in how many sets of weights it is ahead of each other. */
export function WinningTable({ outcome, bids }: { outcome: RankAcceptability; bids: readonly NamedBid[] }) {
  const rows = bids.filter(({ id }) => outcome.bids.some(({ bid }) => bid === id));
  return (
    <Scroller label="Which bid is ahead of which, table">
      <table>
        <caption>
          In how many of {outcome.draws.toLocaleString("en-US")} {drawnThings(outcome.weights)} the bid of the row is
          ahead of the bid of the column, with standard error; a tie is a half; seed {outcome.seed}
        </caption>
        <thead>
          <tr>
            <th scope="col">Bid</th>
            {rows.map(({ id, letter }) => (
              <th key={id} scope="col">
                ahead of {letter}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id, letter }) => (
            <tr key={id}>
              <th scope="row" className={styles.bid}>
                Bid {letter}
              </th>
              {rows.map((other) => {
                const pair = outcome.pairs.find(({ bid, against }) => bid === id && against === other.id);
                return <td key={other.id}>{pair === undefined ? "–" : <DrawnFigure share={pair.ahead} />}</td>;
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
