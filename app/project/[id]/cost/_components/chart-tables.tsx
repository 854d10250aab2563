import { formatMoney } from "#lib/quantity";
import { type PricedBid, presentValueText } from "./priced-bid";
import { runningTotal } from "./running-total";
import styles from "./tables.module.css";

type Shown = Readonly<{ bids: readonly PricedBid[]; currency: string }>;

function BidColumns({ bids }: { bids: readonly PricedBid[] }) {
  return bids.map(({ bid, isLeast }) => (
    <th key={bid.id} scope="col" className="number">
      Bid {bid.letter}
      {isLeast ? ", at least" : null}
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

/** The figures behind the bars of the years: what is paid in each. */
export const PaymentsTable = ({ bids, currency }: Shown) => (
  <YearsTable
    {...{ bids, currency }}
    caption="Payments in each year, not discounted"
    values={bids.map(({ bid }) => bid.cost.yearly)}
  />
);

/** The figures behind the lines: cost so far by year. */
export const RunningTotalTable = ({ bids, currency }: Shown) => (
  <YearsTable
    {...{ bids, currency }}
    caption="Cost so far, not discounted"
    values={bids.map(({ bid }) => runningTotal(bid.cost.yearly))}
  />
);

function YearsTable({
  bids,
  currency,
  caption,
  values,
}: Shown & { caption: string; values: readonly (readonly number[])[] }) {
  return (
    <table className={styles.years}>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">End of year</th>
          <BidColumns bids={bids} />
        </tr>
      </thead>
      <tbody>
        {(values[0] ?? []).map((_, year) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the index is the year
          <tr key={year}>
            <th scope="row">{year === 0 ? "Base date" : year}</th>
            {bids.map(({ bid }, position) => (
              <td key={bid.id} className="number">
                {formatMoney(values[position]?.[year] ?? 0, currency)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
