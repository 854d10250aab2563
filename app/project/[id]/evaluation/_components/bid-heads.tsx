import { BidLetter } from "../../../../_components/bid-letter";
import type { JudgedBid } from "../../_components/judged-bids";

/** One head cell for each bid. */
export function BidHeads({ bids }: { bids: readonly JudgedBid[] }) {
  return bids.map(({ evaluated: { id, letter, bidder }, index }) => (
    <th key={id} scope="col">
      <span className="visually-hidden">Bid </span>
      <BidLetter letter={letter} index={index} />
      <br />
      <span className="small soft">{bidder}</span>
    </th>
  ));
}
