import type { BidEvaluation, Evaluation } from "#lib/evaluation";
import { type Figure, intervalOfFigure } from "#lib/figure";

import type { BidOrders } from "./bid-order";

/** The middle of a figure, its bound where one side is open; null where it is unknown. */
function middleOf(figure: Figure): number | null {
  const interval = intervalOfFigure(figure);
  if (interval === null) return null;
  const ends = [interval.low, interval.high].filter(Number.isFinite);
  return ends.reduce((sum, end) => sum + end, 0) / ends.length;
}

/** The least first; bids without the figure last, otherwise as entered. */
function ascending(bids: readonly BidEvaluation[], figureOf: (bid: BidEvaluation) => number | null): readonly string[] {
  const sizes = bids.map((bid) => ({ id: bid.id, size: figureOf(bid) ?? Number.POSITIVE_INFINITY }));
  return sizes.toSorted((one, other) => (one.size === other.size ? 0 : one.size - other.size)).map(({ id }) => id);
}

/** Bids whose cost is known first, so that among equal costs one that may still rise stands behind. */
const knownFirst = (bids: readonly BidEvaluation[]): readonly BidEvaluation[] =>
  bids.toSorted((one, other) => Number(isOpen(one)) - Number(isOpen(other)));

const isOpen = ({ cost }: BidEvaluation): boolean => cost.presentValue.kind !== "known";

/** Best place first, least cost first, most infill first. A cost that is a least stands at that least. */
export function ordersOf({ bids, ranking }: Evaluation): BidOrders {
  const heaviest = (bid: BidEvaluation) => {
    const mass = middleOf(bid.infill.totalArealDensity);
    return mass === null ? null : -mass;
  };
  return {
    entered: bids.map(({ id }) => id),
    place: [...ranking.places.map(({ bid }) => bid), ...ranking.failing],
    cost: ascending(knownFirst(bids), ({ cost }) => middleOf(cost.presentValue)),
    infill: ascending(bids, heaviest),
  };
}
