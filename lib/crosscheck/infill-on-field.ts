import { type Figure, figureFromInterval } from "#lib/figure";
import { type InfillComponent, massOverArea, stabilisingMass } from "#lib/infill";
import type { CheckedBid } from "./model";
import { notNegative, tagged } from "./span";
import { statedAsNew } from "./stated-as-new";

/**
 * Mass in kg of the infill, or of some of its components, over the owner's field. Where the bid lists no component
 * the total mass per area that it states is taken.
 */
export function infillOnField(bid: CheckedBid, components: readonly InfillComponent[]): Figure<"mass"> {
  const stated = bid.infill.components.length === 0 ? statedAsNew(bid, "infill-total-areal-density") : null;
  if (stated === null) {
    const isWhole = components.length === bid.infill.components.length;
    return isWhole ? bid.stabilisingMass : stabilisingMass({ ...bid.infill, components }, bid.area);
  }
  const perArea = figureFromInterval("arealDensity", tagged("arealDensity", notNegative(stated.span)), {
    formula: "as stated",
    inputs: [],
    assumptions: [],
    source: "the bid",
  });
  return massOverArea(perArea, bid.area);
}
