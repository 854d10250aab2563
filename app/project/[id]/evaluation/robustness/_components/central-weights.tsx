import { formatShare } from "#lib/evaluation";
import type { RankAcceptability } from "#lib/robustness";
import { Scroller } from "../../../../../_components/scroller";
import type { NamedBid } from "./named-bid";

/** For each bid the middle of the weights that put it first, beside the owner's: what one cares for who would choose it. */
export function CentralWeights({
  outcome,
  bids,
  criteria,
}: {
  outcome: RankAcceptability;
  bids: readonly NamedBid[];
  criteria: readonly Readonly<{ label: string; share: number }>[];
}) {
  const columns = bids.flatMap((bid) =>
    outcome.bids.filter((ranks) => ranks.bid === bid.id).map(({ centralWeights }) => ({ bid, centralWeights })),
  );
  return (
    <Scroller label="Weights behind each bid, table">
      <table>
        <caption>The middle of all weights that put a bid first, beside the owner’s</caption>
        <thead>
          <tr>
            <th scope="col">Criterion</th>
            <th scope="col" className="number">
              The owner
            </th>
            {columns.map(({ bid }) => (
              <th key={bid.id} scope="col" className="number">
                Bid {bid.letter}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {criteria.map(({ label, share }, row) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              <td className="number">{formatShare(share)}</td>
              {columns.map(({ bid, centralWeights }) => (
                <td key={bid.id} className="number">
                  {centralWeights === null ? "never first" : `${Math.round(100 * (centralWeights[row] ?? 0))} %`}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
