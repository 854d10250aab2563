import type { CostConventions } from "#lib/cost";
import type { BidEvaluation } from "#lib/evaluation";
import type { Figure } from "#lib/figure";
import { formatValue, measured, type UnitSystem } from "#lib/quantity";
import { BidColumns, RowHead } from "../../../../_components/bid-columns";
import { FigureText } from "../../../../_components/figure-text";
import { Scroller } from "../../../../_components/scroller";
import { ownersAdditions, ownersEstimates } from "./cost-figures";
import type { PricedBid } from "./priced-bid";
import styles from "./tables.module.css";

type Row = Readonly<{
  label: string;
  note: string;
  weight: "plain" | "strong";
  figure: (bid: BidEvaluation) => Figure | undefined;
}>;

const percent = (rate: number) => formatValue("fraction", measured("fraction", rate), "us");

const priceRows: readonly Row[] = [
  {
    label: "Price as bid",
    note: "The bidder’s own prices, paid at the base date",
    weight: "plain",
    figure: ({ cost }) => cost.priceAsBid,
  },
  {
    label: "Owner’s additions",
    note: "Owner’s estimate of what the bid leaves out, paid at the base date",
    weight: "plain",
    figure: ownersAdditions,
  },
  {
    label: "Price at the base date",
    note: "Both together",
    weight: "strong",
    figure: ({ cost }) => cost.priceAtBaseDate,
  },
];

const yearlyRows: readonly Row[] = [
  {
    label: "Equivalent annual cost",
    note: "A year: the equal yearly cost that is worth the same as all payments",
    weight: "plain",
    figure: ({ cost }) => cost.equivalentAnnualCost,
  },
  { label: "Per area", note: "A year", weight: "plain", figure: ({ cost }) => cost.perAreaYear },
  { label: "Per hour of use", note: "At the hours of the brief", weight: "plain", figure: ({ cost }) => cost.perHour },
];

const rateRow = (index: number, rate: number, studyRate: number): Row => ({
  label: `Present value at ${percent(rate)}`,
  note: rateNote(rate, studyRate),
  weight: "plain",
  figure: ({ cost }) => cost.atRates[index]?.presentValue,
});

function rateNote(rate: number, studyRate: number): string {
  if (rate === studyRate) return "The rate of this study, as above";
  return rate === 0 ? "Not discounted: the plain sum of all payments" : "For comparison";
}

/** What each bid comes to, from the price on the form to the cost of an hour. */
export function TotalsTable({
  project,
  bids,
  units,
  conventions,
}: {
  project: string;
  bids: readonly PricedBid[];
  units: UnitSystem;
  conventions: CostConventions;
}) {
  const { studyPeriod, realRate } = conventions;
  const rows: readonly Row[] = [
    ...priceRows,
    {
      label: "Present value",
      note: `All payments of ${studyPeriod.years} years, at a real rate of ${realRate.asEntered} a year`,
      weight: "strong",
      figure: ({ cost }) => cost.presentValue,
    },
    {
      label: "Of this on owner’s estimates",
      note: "The part of the present value that no bidder has promised",
      weight: "plain",
      figure: ownersEstimates,
    },
    ...yearlyRows,
    ...(bids[0]?.bid.cost.atRates ?? []).map((entry, index) => rateRow(index, entry.rate, realRate.value)),
  ];
  return (
    <Scroller label="Totals of all bids">
      <table className={styles.wide}>
        <caption className="visually-hidden">What each bid costs</caption>
        <BidColumns
          corner="Figure"
          bids={bids.map(({ bid, index }) => ({ letter: bid.letter, index, bidder: bid.bidder }))}
        />
        <tbody>
          {rows.map(({ label, note, weight, figure }) => (
            <tr key={label} className={weight === "strong" ? styles.strong : undefined}>
              <RowHead>
                {label}
                <p className={styles.note}>{note}</p>
              </RowHead>
              {bids.map(({ bid }) => {
                const found = figure(bid);
                return (
                  <td key={bid.id}>
                    {found === undefined ? null : (
                      <FigureText project={project} of={`${label}, bid ${bid.letter}`} figure={found} units={units} />
                    )}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
