import type { CostSwings } from "#lib/cost";
import { formatMoney } from "#lib/quantity";
import { BidLetter } from "../../../../../_components/bid-letter";
import { Scroller } from "../../../../../_components/scroller";

/** Which uncertain figure moves a bid’s cost most: each alone at its 10th and 90th percentile, all else as entered. */
export function Swings({
  swings,
  bids,
  currency,
}: {
  swings: readonly CostSwings[];
  bids: readonly Readonly<{ id: string; letter: string; index: number }>[];
  currency: string;
}) {
  return swings.map(({ bid, swings: inputs }) => {
    const named = bids.find(({ id }) => id === bid);
    const moving = inputs.filter(({ swing }) => swing > 0.5);
    if (named === undefined) return null;
    return (
      <section key={bid} aria-label={`What moves bid ${named.letter}`}>
        <h3>
          Bid <BidLetter letter={named.letter} index={named.index} />
        </h3>
        {moving.length === 0 ? (
          <p>None of the figures above moves its cost.</p>
        ) : (
          <Scroller label={`What moves bid ${named.letter}, table`}>
            <table>
              <caption className="visually-hidden">What moves the cost of bid {named.letter}, the most first</caption>
              <thead>
                <tr>
                  <th scope="col">Uncertain figure</th>
                  <th scope="col" className="number">
                    Cost at its low end
                  </th>
                  <th scope="col" className="number">
                    Cost at its high end
                  </th>
                  <th scope="col" className="number">
                    Between the two
                  </th>
                </tr>
              </thead>
              <tbody>
                {moving.map(({ input, label, low, high, swing }) => (
                  <tr key={input}>
                    <th scope="row">{label}</th>
                    <td className="number">{formatMoney(low.cents, currency)}</td>
                    <td className="number">{formatMoney(high.cents, currency)}</td>
                    <td className="number">{formatMoney(swing, currency)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </Scroller>
        )}
      </section>
    );
  });
}
