import { type CostFlow, cashFlows, type PriceLine } from "#lib/cost";
import type { BidEvaluation, Evaluation, Project } from "#lib/evaluation";
import { intervalOfFigure } from "#lib/figure";
import type { In } from "#lib/quantity";

/** A bid with prices of its own: its evaluation, its place among all bids, and its money by line. Cents, not rounded. */
export type PricedBid = Readonly<{
  bid: BidEvaluation;
  index: number;
  prices: readonly PriceLine[];
  flows: readonly CostFlow[];
  presentValue: number;
  priceAtBaseDate: number;
}>;

/** The area of the field in m², by which prices per area are multiplied. */
export function pricedArea({ area }: Evaluation): In<"m²"> {
  const squareMetres = intervalOfFigure(area)?.low;
  if (squareMetres === undefined) throw new RangeError("a field without an area: its schema let it through");
  return squareMetres;
}

/** The bids whose cost is known, in the order of the letters. */
export function pricedBids({ brief, bids }: Project, evaluation: Evaluation): readonly PricedBid[] {
  const setting = { area: pricedArea(evaluation), conventions: brief.money };
  return evaluation.bids.flatMap((bid, index): readonly PricedBid[] => {
    const { presentValue, priceAtBaseDate } = bid.cost;
    if (presentValue.kind !== "known" || priceAtBaseDate.kind !== "known") return [];
    const prices = bids[index]?.prices ?? [];
    const flows = cashFlows(prices, setting).flows.map(({ flow }) => flow);
    return [{ bid, index, prices, flows, presentValue: presentValue.value, priceAtBaseDate: priceAtBaseDate.value }];
  });
}
