import type { BidCost } from "#lib/cost";
import type { Figure } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import { BidColumns, RowHead } from "../../../../_components/bid-columns";
import { FigureText } from "../../../../_components/figure-text";
import { Scroller } from "../../../../_components/scroller";
import type { CostedBid } from "./costed-bid";
import styles from "./levelling.module.css";

const figureRows: readonly Readonly<{ label: string; note: string; figure: (cost: BidCost) => Figure }>[] = [
  {
    label: "Price as bid",
    note: "The bidder’s own prices at the base date; levelling never changes it",
    figure: ({ asBid }) => asBid.priceAtBaseDate,
  },
  {
    label: "Price levelled",
    note: "With everything that stands in for what the bid leaves out",
    figure: ({ priceAtBaseDate }) => priceAtBaseDate,
  },
  {
    label: "Present value as bid",
    note: "The bidder’s own prices over the study",
    figure: ({ asBid }) => asBid.presentValue,
  },
  {
    label: "Present value levelled",
    note: "What the comparison counts",
    figure: ({ presentValue }) => presentValue,
  },
];

/** What each bid comes to as bid and levelled, and what is still open. */
export function LevelledTotals({
  project,
  bids,
  units,
}: {
  project: string;
  bids: readonly CostedBid[];
  units: UnitSystem;
}) {
  return (
    <Scroller label="As bid and levelled, table">
      <table className={styles.totals}>
        <caption className="visually-hidden">What each bid comes to as bid and levelled</caption>
        <BidColumns corner="Figure" bids={bids} />
        <tbody>
          {figureRows.map(({ label, note, figure }) => (
            <tr key={label}>
              <RowHead>
                {label}
                <p className={styles.note}>{note}</p>
              </RowHead>
              {bids.map(({ id, letter, cost }) => (
                <td key={id}>
                  <FigureText project={project} of={`${label}, bid ${letter}`} figure={figure(cost)} units={units} />
                </td>
              ))}
            </tr>
          ))}
          <tr>
            <RowHead>
              Still open
              <p className={styles.note}>Items without a figure: the levelled cost is at least what it says</p>
            </RowHead>
            {bids.map(({ id, cost }) => (
              <td key={id}>
                <OpenItems scope={cost.scope} />
              </td>
            ))}
          </tr>
        </tbody>
      </table>
    </Scroller>
  );
}

function OpenItems({ scope }: Pick<BidCost, "scope">) {
  const open = scope.filter(({ outcome }) => outcome.kind === "open");
  const notAsked = scope.filter(({ standing }) => standing === "not-asked").length;
  return (
    <>
      {open.length === 0 ? (
        <span>nothing</span>
      ) : (
        <ul className={styles.openItems}>
          {open.map(({ item, label }) => (
            <li key={item}>
              <a href={`#item-${item}`}>{label}</a>
            </li>
          ))}
        </ul>
      )}
      {notAsked === 0 ? null : (
        <p className={styles.note}>
          {notAsked} {notAsked === 1 ? "item" : "items"} not asked yet
        </p>
      )}
    </>
  );
}
