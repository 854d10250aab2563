import styles from "./bid-columns.module.css";
import { BidLetter } from "./bid-letter";

/** The head row of a table whose columns are bids: the letter first, then who bids. */
export function BidColumns({
  corner,
  bids,
}: {
  corner: string;
  bids: readonly Readonly<{ letter: string; index: number; bidder: string }>[];
}) {
  return (
    <thead>
      <tr>
        <th scope="col" className={styles.first}>
          {corner}
        </th>
        {bids.map(({ letter, index, bidder }) => (
          <th key={letter} scope="col" className={styles.bid}>
            <BidLetter letter={letter} index={index} /> <span className={styles.bidder}>{bidder}</span>
          </th>
        ))}
      </tr>
    </thead>
  );
}

/** The head of a row, which stays in view while the table scrolls sideways. */
export function RowHead({ children }: { children: React.ReactNode }) {
  return (
    <th scope="row" className={styles.first}>
      {children}
    </th>
  );
}
