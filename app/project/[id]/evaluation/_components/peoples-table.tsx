import { formatPoints, type PeoplesOrders, peoplesSentences } from "#lib/evaluation";
import { Scroller } from "../../../../_components/scroller";
import type { JudgedBid } from "../../_components/judged-bids";
import { BidHeads } from "./bid-heads";
import styles from "./tables.module.css";

/** The order of the bids by each person's own weights, beside the one that counts. */
export function PeoplesTable({ orders, bids }: { orders: PeoplesOrders; bids: readonly JudgedBid[] }) {
  const letterOf = (bid: string) => bids.find(({ evaluated: { id } }) => id === bid)?.evaluated.letter ?? bid;
  return (
    <>
      <p>{peoplesSentences(orders, letterOf).join(" ")}</p>
      <Scroller label="Each person’s order, table">
        <table className={styles.matrix}>
          <caption>Place and points of each bid by each person’s own weights</caption>
          <thead>
            <tr>
              <th scope="col">Weights of</th>
              <BidHeads bids={bids} />
            </tr>
          </thead>
          <tbody>
            {orders.people.map(({ person, ranking, totals }) => (
              <tr key={person}>
                <th scope="row">{person}</th>
                {bids.map(({ evaluated: { id } }) => {
                  const place = ranking.places.find(({ bid }) => bid === id)?.place;
                  const total = totals.find(({ bid }) => bid === id)?.total ?? 0;
                  return (
                    <td key={id}>
                      <span className={styles.figure}>{place === undefined ? "no place" : `place ${place}`}</span>
                      <span className={styles.under}>{formatPoints(total)} points</span>
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroller>
    </>
  );
}
