import { type CostConventions, flowPresentValue, parseRealRate } from "#lib/cost";
import { failed, type Result, succeeded } from "#lib/quantity";
import type { PricedBid } from "./priced-bid";

/** What another real rate makes of the bids; cents, not rounded. */
export type TriedRate = Readonly<{
  asEntered: string;
  rows: readonly Readonly<{ bid: PricedBid; before: number; after: number }>[];
  /** The letters from the cheapest to the dearest, at the rate of the study and at this one. */
  orders: Readonly<{ before: readonly string[]; after: readonly string[] }>;
}>;

/** Costs all bids anew at a rate as typed, or says what is the matter with it. */
export function triedRate(
  text: string,
  bids: readonly PricedBid[],
  { timing }: CostConventions,
): Result<TriedRate, string> {
  const rate = parseRealRate(text);
  if (!rate.ok) return failed(rate.problem);
  const rows = bids.map((bid) => ({
    bid,
    before: bid.presentValue,
    after: bid.flows.reduce((sum, flow) => sum + flowPresentValue(flow, { rate: rate.value.value, timing }), 0),
  }));
  const order = (by: "before" | "after") =>
    rows.toSorted((one, other) => one[by] - other[by]).map(({ bid }) => bid.bid.letter);
  return succeeded({
    asEntered: rate.value.asEntered,
    rows,
    orders: { before: order("before"), after: order("after") },
  });
}

/** Whether the order of the bids moves, in a sentence. */
export function orderInWords({ asEntered, orders: { before, after } }: TriedRate): string {
  const same = before.every((letter, at) => letter === after[at]);
  return same
    ? `At ${asEntered} the order by cost stays ${after.join(", ")}.`
    : `At ${asEntered} the order by cost is ${after.join(", ")}; at the rate of the study it is ${before.join(", ")}.`;
}
