import { formatMoney } from "#lib/quantity";
import { type PricedBid, presentValueText } from "./priced-bid";
import { runningTotal } from "./running-total";
import styles from "./tables.module.css";

type Shown = Readonly<{ bids: readonly PricedBid[]; currency: string }>;

function BidColumns({ bids }: { bids: readonly PricedBid[] }) {
  return bids.map(({ bid }) => (
    <th key={bid.id} scope="col" className="number">
      Bid {bid.letter}
    </th>
  ));
}

/** The figures behind the bars: present value by category. */
export function CategoryTable({ bids, currency }: Shown) {
  const categories = bids[0]?.bid.cost.categories ?? [];
  return (
    <table>
      <caption>Present value by category; each figure is rounded for itself</caption>
      <thead>
        <tr>
          <th scope="col">Category</th>
          <BidColumns bids={bids} />
        </tr>
      </thead>
      <tbody>
        {categories.map(({ category, label }) => (
          <tr key={category}>
            <th scope="row">{label}</th>
            {bids.map(({ bid }) => (
              <td key={bid.id} className="number">
                {formatMoney(shownOf(bid.cost.categories, category), currency)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">Present value</th>
          {bids.map((priced) => (
            <td key={priced.bid.id} className="number">
              {presentValueText(priced, currency)}
            </td>
          ))}
        </tr>
      </tfoot>
    </table>
  );
}

const shownOf = (categories: PricedBid["bid"]["cost"]["categories"], wanted: string) =>
  categories.find(({ category }) => category === wanted)?.presentValue ?? 0;

/** The figures behind the lines: cost so far by year. */
export function RunningTotalTable({ bids, currency }: Shown) {
  const totals = bids.map(({ bid }) => runningTotal(bid.cost.yearly));
  return (
    <table className={styles.years}>
      <caption>Cost so far, not discounted</caption>
      <thead>
        <tr>
          <th scope="col">End of year</th>
          <BidColumns bids={bids} />
        </tr>
      </thead>
      <tbody>
        {(totals[0] ?? []).map((_, year) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the index is the year
          <tr key={year}>
            <th scope="row">{year === 0 ? "Base date" : year}</th>
            {bids.map(({ bid }, position) => (
              <td key={bid.id} className="number">
                {formatMoney(totals[position]?.[year] ?? 0, currency)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
