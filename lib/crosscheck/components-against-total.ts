import { claimsFor, quantityOf } from "#lib/claim";
import { intervalOfFigure } from "#lib/figure";
import { intervalOf } from "#lib/quantity";
import type { Rule } from "./model";

/** Room for figures that were rounded before they were written. @source common practice, no source */
const roundingShare = 0.01;

/** The components of an infill have to add up to the total that the bid states. */
export const componentsAgainstTotal: Rule = ({ claims, totalArealDensity }) => {
  const sum = intervalOfFigure(totalArealDensity);
  if (sum === null) return [];
  return claimsFor(claims, "infill-total-areal-density").flatMap((claim) => {
    const quantity = quantityOf(claim, "infill-total-areal-density");
    if (quantity === null) return [];
    const stated = intervalOf(quantity.reading);
    const agree = sum.low <= stated.high * (1 + roundingShare) && stated.low <= sum.high * (1 + roundingShare);
    return agree
      ? []
      : [{ kind: "components-against-total", severity: "can't be true", claim: claim.id, sum, stated } as const];
  });
};
