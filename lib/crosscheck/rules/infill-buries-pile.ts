import { bestClaim, quantityOf } from "#lib/claim";
import { intervalOfFigure, quantityInPhrase, say } from "#lib/figure";
import { intervalOf } from "#lib/quantity";
import { claimInput, figureInput } from "../inputs";
import type { Rule } from "../model";

/** Infill can't be deeper than the pile that holds it. Fires only where the two ranges leave no room to agree. */
export const infillBuriesPile: Rule = {
  id: "infill-buries-pile",
  title: "The infill would stand above the pile",
  holds: "the depth of the infill from its own mass against the pile height",
  tolerance: "none: it fires only where the ranges of both leave no room to agree",
  check: (bid) => {
    const depth = intervalOfFigure(bid.infillDepth);
    const found = bestClaim(bid.claims, { property: "pile-height" });
    const quantity = found.ok ? quantityOf(found.value.claim, "pile-height") : null;
    if (depth === null || !found.ok || quantity === null) return [];
    const pileHeight = intervalOf(quantity.reading);
    if (depth.low <= pileHeight.high) return [];
    const [depthShown, pileShown] = [quantityInPhrase("length", depth), quantityInPhrase("length", pileHeight)];
    return [
      {
        severity: "can't be true",
        claims: [found.value.claim.id],
        sentence: say`By its own mass the infill is ${depthShown} deep; the pile is ${pileShown} high.`,
        question: say`The infill you state comes to a depth of ${depthShown} in a pile of ${pileShown}. Please check both figures.`,
        working: {
          formula: "infill depth ≤ pile height",
          inputs: [figureInput("Infill depth, loose as poured", bid.infillDepth), claimInput(bid, found.value.claim)],
          assumptions: [],
          source: "geometry",
        },
      },
    ];
  },
};
