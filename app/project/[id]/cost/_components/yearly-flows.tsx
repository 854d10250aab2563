import { type CostCategory, costCategories } from "#lib/cost";
import { formatMoney } from "#lib/quantity";
import { Scroller } from "../../../../_components/scroller";
import type { PricedBid } from "./priced-bid";
import { runningTotal } from "./running-total";
import styles from "./tables.module.css";

const amount = (cents: number, currency: string) => (cents === 0 ? "–" : formatMoney(cents, currency));
const summed = (cents: readonly number[]) => cents.reduce((sum, one) => sum + one, 0);

/** All payments of a bid, year by year and by what they are for. */
export function YearlyFlows({ priced, currency }: { priced: PricedBid; currency: string }) {
  const { bid } = priced;
  const { yearly, yearlyByCategory } = bid.cost;
  const spent = (Object.keys(costCategories) as CostCategory[]).filter((category) =>
    yearlyByCategory[category].some((cents) => cents !== 0),
  );
  const running = runningTotal(yearly);
  return (
    <details>
      <summary>
        Bid {bid.letter}, {bid.bidder}: year by year
      </summary>
      <Scroller label={`Bid ${bid.letter}, year by year`}>
        <table className={styles.years}>
          <caption>Payments of bid {bid.letter}, not discounted</caption>
          <thead>
            <tr>
              <th scope="col">End of year</th>
              {spent.map((category) => (
                <th key={category} scope="col" className="number">
                  {costCategories[category].label}
                </th>
              ))}
              <th scope="col" className="number">
                All
              </th>
              <th scope="col" className="number">
                So far
              </th>
            </tr>
          </thead>
          <tbody>
            {yearly.map((cents, year) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: the index is the year
              <tr key={year}>
                <th scope="row">{year === 0 ? "Base date" : year}</th>
                {spent.map((category) => (
                  <td key={category} className="number">
                    {amount(yearlyByCategory[category][year] ?? 0, currency)}
                  </td>
                ))}
                <td className="number">{amount(cents, currency)}</td>
                <td className="number">{amount(running[year] ?? 0, currency)}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">All years</th>
              {spent.map((category) => (
                <td key={category} className="number">
                  {amount(summed(yearlyByCategory[category]), currency)}
                </td>
              ))}
              <td className="number">{amount(summed(yearly), currency)}</td>
              <td />
            </tr>
          </tfoot>
        </table>
      </Scroller>
    </details>
  );
}
