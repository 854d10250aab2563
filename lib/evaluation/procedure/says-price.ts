/** Whether a bid, as stored, says anything of its price. */
export const saysPrice = (
  bid: Readonly<{ prices: readonly unknown[]; statedTotal: unknown; statedTotalInWords: string }>,
) => bid.prices.length > 0 || bid.statedTotal !== null || bid.statedTotalInWords !== "";
