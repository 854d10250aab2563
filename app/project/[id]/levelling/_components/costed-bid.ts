import type { BidCost, MoneyFinding } from "#lib/cost";

/** A bid with what it costs, levelled, and its place among the bids. */
export type CostedBid = Readonly<{
  id: string;
  letter: string;
  index: number;
  bidder: string;
  cost: BidCost;
  priceFindings: readonly MoneyFinding[];
}>;
