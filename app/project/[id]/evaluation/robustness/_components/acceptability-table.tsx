import type { RankAcceptability } from "#lib/robustness";
import { DrawnFigure } from "./drawn-figure";
import type { NamedBid } from "./named-bid";
import { drawnThings } from "./rank-words";
import styles from "./robustness.module.css";

/** Every place of every bid over the sets of weights, each share with its standard error. */
export function AcceptabilityTable({ outcome, bids }: { outcome: RankAcceptability; bids: readonly NamedBid[] }) {
  const rows = bids.flatMap((bid) =>
    outcome.bids.filter((ranks) => ranks.bid === bid.id).map((ranks) => ({ bid, ranks })),
  );
  return (
    <table>
      <caption>
        In how many of {outcome.draws.toLocaleString("en-US")} {drawnThings(outcome.weights)} a bid takes each place,
        with standard error; seed {outcome.seed}
      </caption>
      <thead>
        <tr>
          <th scope="col">Bid</th>
          {rows.map(({ bid }, place) => (
            <th key={bid.id} scope="col">
              Place {place + 1}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ bid, ranks }) => (
          <tr key={bid.id}>
            <th scope="row" className={styles.bid}>
              Bid {bid.letter}
            </th>
            {ranks.places.map((share, place) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a place is its index
              <td key={place}>
                <DrawnFigure share={share} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
