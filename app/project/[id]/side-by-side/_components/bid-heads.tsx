import { BidLetter } from "../../../../_components/bid-letter";
import type { BidOrders } from "../_comparison/bid-order";
import { fields, neighbourOf, type Side, type TableChoice } from "../_comparison/table-choice";
import styles from "./bid-heads.module.css";
import type { BidHead } from "./table-row";

type Heads = Readonly<{
  bids: readonly BidHead[];
  columns: readonly number[];
  choice: TableChoice;
  orders: BidOrders;
  /** The id of the form that the buttons belong to. */
  form: string;
}>;

const arrows: Readonly<Record<Side, string>> = { left: "M10 3 5 8l5 5", right: "M6 3l5 5-5 5" };

/** The head row: who bids, with a way to move each bid. */
export function BidHeads({ bids, columns, choice, orders, form }: Heads) {
  return columns.map((index) => {
    const bid = bids[index];
    if (bid === undefined) return null;
    return (
      <th key={bid.id} scope="col" data-pinned={bid.id === choice.pinned || undefined}>
        <span className="visually-hidden">Bid </span>
        <BidLetter letter={bid.letter} index={index} /> <span className={styles.bidder}>{bid.bidder}</span>
        <small>{bid.system}</small>
        <span className={`${styles.moves} screen-only`}>
          {(["left", "right"] as const).map((side) => (
            <button
              key={side}
              type="submit"
              form={form}
              name={fields.move}
              value={`${side}.${bid.id}`}
              aria-label={`Move bid ${bid.letter} ${side}`}
              aria-disabled={neighbourOf(choice, orders, bid.id, side) === null || undefined}
            >
              <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
                <path d={arrows[side]} fill="none" stroke="currentColor" strokeWidth="2" />
              </svg>
            </button>
          ))}
        </span>
      </th>
    );
  });
}
