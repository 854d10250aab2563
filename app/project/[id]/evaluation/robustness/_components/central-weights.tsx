import { formatShare } from "#lib/evaluation";
import type { RankAcceptability } from "#lib/robustness";
import type { Estimate } from "#lib/sampling";
import { Scroller } from "../../../../../_components/scroller";
import type { NamedBid } from "./named-bid";
import { drawnThings } from "./rank-words";

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
        <caption>
          The middle of all weights that put a bid first, with standard error, beside the owner’s;{" "}
          {outcome.draws.toLocaleString("en-US")} {drawnThings(outcome.weights)}, seed {outcome.seed}
        </caption>
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
                  <CentralWeight estimate={centralWeights?.[row]} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}

function CentralWeight({ estimate }: { estimate: Estimate | undefined }) {
  if (estimate === undefined) return "never first";
  const { value, standardError } = estimate;
  return (
    <>
      {formatShare(value)}
      {standardError > 0 && Number.isFinite(standardError) ? (
        <span className="soft"> ± {Number((100 * standardError).toPrecision(2))} %</span>
      ) : null}
    </>
  );
}
