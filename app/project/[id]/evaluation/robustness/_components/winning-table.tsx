import type { RankAcceptability } from "#lib/robustness";
import { Scroller } from "../../../../../_components/scroller";
import type { NamedBid } from "./named-bid";
import { ofHundred } from "./rank-words";

/** Bid by bid, in how many sets of weights it is ahead of each other. */
export function WinningTable({ outcome, bids }: { outcome: RankAcceptability; bids: readonly NamedBid[] }) {
  const rows = bids.filter(({ id }) => outcome.bids.some(({ bid }) => bid === id));
  return (
    <Scroller label="Which bid is ahead of which, table">
      <table>
        <caption>
          In how many sets of weights the bid of the row is ahead of the bid of the column; a tie is a half
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
              <th scope="row">Bid {letter}</th>
              {rows.map((other) => {
                const pair = outcome.pairs.find(({ bid, against }) => bid === id && against === other.id);
                return <td key={other.id}>{pair === undefined ? "–" : ofHundred(pair.ahead.value)}</td>;
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
