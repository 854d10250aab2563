import { type CostFlow, cashFlows, inConstantMoney, type PriceLine } from "#lib/cost";
import type { BidEvaluation, Evaluation, Project } from "#lib/evaluation";
import { intervalOfFigure } from "#lib/figure";
import { formatMoney, type In } from "#lib/quantity";

/**
 * A bid with prices of its own: its evaluation, its place among all bids, and its money by line in constant money. Cents, not rounded; the least
 * that it can be where an item of scope has no figure yet.
 */
export type PricedBid = Readonly<{
  bid: BidEvaluation;
  index: number;
  prices: readonly PriceLine[];
  flows: readonly CostFlow[];
  presentValue: number;
  priceAtBaseDate: number;
  /** Whether both are only the least that it can be. */
  isLeast: boolean;
}>;

/** "$1,228,454", or "at least $1,228,454" where an item of scope has no figure yet. */
export const presentValueText = ({ presentValue, isLeast }: PricedBid, currency: string): string =>
  `${isLeast ? "at least " : ""}${formatMoney(presentValue, currency)}`;

/** The area of the field in m², by which prices per area are multiplied. */
export function pricedArea({ area }: Evaluation): In<"m²"> {
  const squareMetres = intervalOfFigure(area)?.low;
  if (squareMetres === undefined) throw new RangeError("a field without an area: its schema let it through");
  return squareMetres;
}

/** The bids whose cost is known, in the order of the letters. */
export function pricedBids({ brief }: Project, evaluation: Evaluation): readonly PricedBid[] {
  const setting = { area: pricedArea(evaluation), conventions: inConstantMoney(brief.money) };
  return evaluation.bids.flatMap((bid, index): readonly PricedBid[] => {
    const presentValue = intervalOfFigure(bid.cost.presentValue)?.low;
    const priceAtBaseDate = intervalOfFigure(bid.cost.priceAtBaseDate)?.low;
    if (presentValue === undefined || priceAtBaseDate === undefined) return [];
    const prices = bid.cost.lines.map(({ line }) => line);
    const flows = cashFlows(prices, setting).flows.map(({ flow }) => flow);
    const isLeast = bid.cost.presentValue.kind === "at-least";
    return [{ bid, index, prices, flows, presentValue, priceAtBaseDate, isLeast }];
  });
}
