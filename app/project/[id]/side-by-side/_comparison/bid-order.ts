/** By what the bids can be put in order. */
export const bidOrders = {
  entered: "as entered",
  place: "by place",
  cost: "by life-cycle cost, an open one at its least",
  infill: "by infill mass",
} as const;

export type BidOrder = keyof typeof bidOrders;

/** The ids of all bids, in each order. */
export type BidOrders = Readonly<Record<BidOrder, readonly string[]>>;
