import { bestClaim, quantityOf } from "#lib/claim";
import { intervalOfFigure } from "#lib/figure";
import { intervalOf } from "#lib/quantity";
import type { Rule } from "./model";

/** Infill can't be deeper than the pile that holds it. Fires only where the two ranges leave no room to agree. */
export const infillBuriesPile: Rule = ({ claims, infillDepth }) => {
  const depth = intervalOfFigure(infillDepth);
  const found = bestClaim(claims, { property: "pile-height" });
  const quantity = found.ok ? quantityOf(found.value.claim, "pile-height") : null;
  if (depth === null || !found.ok || quantity === null) return [];
  const pileHeight = intervalOf(quantity.reading);
  return depth.low > pileHeight.high
    ? [
        {
          kind: "infill-buries-pile",
          severity: "can't be true",
          claim: found.value.claim.id,
          depth,
          pileHeight,
        },
      ]
    : [];
};
