import Link from "next/link";
import { BidLetter } from "../../../../_components/bid-letter";
import type { CostedBid } from "./costed-bid";
import styles from "./levelling.module.css";

/** Lines that are entered and do not count, each with the reason; links that were asked for and do not count. */
export function NotCounted({ project, bids }: { project: string; bids: readonly CostedBid[] }) {
  const rows = bids.flatMap((bid) => [
    ...bid.cost.leftOut.map(({ line, because }) => ({
      key: `${bid.id} ${line.id}`,
      bid,
      what: (
        <Link href={`/project/${project}/bids/${bid.id}#${line.id}`} prefetch={false}>
          {line.label}
        </Link>
      ),
      because,
    })),
    ...bid.cost.links.flatMap((row) =>
      row.kind === "not-counted"
        ? [{ key: `${bid.id} ${row.link}`, bid, what: <>{row.label}</>, because: row.because }]
        : [],
    ),
    ...bid.cost.notes.map((note) => ({ key: `${bid.id} ${note}`, bid, what: null, because: note })),
  ]);
  if (rows.length === 0) return <p>Every price that is entered counts.</p>;
  return (
    <ul className={styles.notes}>
      {rows.map(({ key, bid, what, because }) => (
        <li key={key}>
          <BidLetter letter={bid.letter} index={bid.index} /> {what === null ? null : <strong>{what}.</strong>}{" "}
          {because}
        </li>
      ))}
    </ul>
  );
}
