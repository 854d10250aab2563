import type { CostConventions } from "#lib/cost";
import { formatMoney } from "#lib/quantity";
import { BidLetter } from "../../../../_components/bid-letter";
import { Scroller } from "../../../../_components/scroller";
import type { PricedBid } from "./priced-bid";
import styles from "./tables.module.css";
import { orderInWords, triedRate } from "./tried-rate";

/** Lets the reader try another real rate and see what moves; nothing is stored, and the address holds the rate. */
export function TryRate({
  bids,
  conventions,
  typed,
}: {
  bids: readonly PricedBid[];
  conventions: CostConventions;
  /** The rate in the address as typed; null where none is tried. */
  typed: string | null;
}) {
  const tried = typed === null ? null : triedRate(typed, bids, conventions);
  const problem = tried !== null && !tried.ok ? tried.problem : null;
  return (
    <section aria-labelledby="try-rate" className={tried?.ok ? undefined : "screen-only"}>
      <h2 id="try-rate">Try another rate</h2>
      <form action="#try-rate" className={`${styles.tryRate} screen-only`}>
        <label htmlFor="tried-rate">Real rate a year</label>
        <input
          id="tried-rate"
          name="rate"
          type="text"
          defaultValue={typed ?? `${Number((conventions.realRate.value * 100).toPrecision(6))} %`}
          aria-invalid={problem !== null}
          aria-describedby={problem === null ? undefined : "tried-rate-problem"}
        />
        <button type="submit">Show what moves</button>
      </form>
      {problem === null ? null : (
        <p id="tried-rate-problem" role="alert" className={styles.problem}>
          {problem}
        </p>
      )}
      {tried?.ok ? <Moved tried={tried.value} currency={conventions.currency} /> : null}
    </section>
  );
}

/** What a bid leaves open makes its cost a lower bound. */
const least = ({ cost }: PricedBid["bid"]) => (cost.presentValue.kind === "at-least" ? "at least " : "");

type Tried = Extract<ReturnType<typeof triedRate>, { ok: true }>["value"];

function Moved({ tried, currency }: { tried: Tried; currency: string }) {
  return (
    <>
      <p>{orderInWords(tried)}</p>
      <Scroller label={`What a rate of ${tried.asEntered} moves`}>
        <table>
          <caption className="visually-hidden">Present value at the rate of the study and at {tried.asEntered}</caption>
          <thead>
            <tr>
              <th scope="col">Bid</th>
              <th scope="col" className="number">
                At the rate of the study
              </th>
              <th scope="col" className="number">
                At {tried.asEntered}
              </th>
              <th scope="col" className="number">
                Moves by
              </th>
            </tr>
          </thead>
          <tbody>
            {tried.rows.map(({ bid: { bid, index }, before, after }) => (
              <tr key={bid.id}>
                <th scope="row">
                  <BidLetter letter={bid.letter} index={index} /> {bid.bidder}
                </th>
                <td className="number">
                  {least(bid)}
                  {formatMoney(before, currency)}
                </td>
                <td className="number">
                  {least(bid)}
                  {formatMoney(after, currency)}
                </td>
                <td className="number">
                  {after < before ? "−" : "+"}
                  {formatMoney(Math.abs(after - before), currency)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroller>
    </>
  );
}
