import { bestClaim, quantityOf } from "#lib/claim";
import { intervalOfFigure, say, type WorkingInput } from "#lib/figure";
import { intervalOf } from "#lib/quantity";
import { claimInput, figureInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { beside, type Span, spanInPhrase } from "../span";
import { statedAsNew } from "../stated-as-new";

/** A depth of infill, how the bid comes to it, and the claim that states it. */
type Depth = Readonly<{ span: Span; by: string; claims: readonly string[]; input: () => WorkingInput }>;

function depthsOf(bid: CheckedBid): readonly Depth[] {
  const derived = intervalOfFigure(bid.infillDepth);
  const stated = statedAsNew(bid, "infill-depth");
  const label = "Infill depth, loose as poured";
  return [
    ...(derived === null
      ? []
      : [{ span: derived, by: "By its own mass", claims: [], input: () => figureInput(label, bid.infillDepth) }]),
    ...(stated === null
      ? []
      : [
          {
            span: stated.span,
            by: "As the bid states it,",
            claims: [stated.claim.id],
            input: () => claimInput(bid, stated.claim),
          },
        ]),
  ];
}

/** Infill can't be deeper than the pile that holds it. Fires only where the two ranges leave no room to agree. */
export const infillBuriesPile: Rule = {
  id: "infill-buries-pile",
  title: "The infill would stand above the pile",
  holds: "the depth of the infill, from its own mass and as stated, against the pile height",
  tolerance: "none: it fires only where the ranges of both leave no room to agree",
  check: (bid) => {
    const found = bestClaim(bid.claims, { property: "pile-height" });
    const quantity = found.ok ? quantityOf(found.value.claim, "pile-height") : null;
    if (!found.ok || quantity === null) return [];
    const pile = found.value.claim;
    const pileHeight: Span = intervalOf(quantity.reading);
    return depthsOf(bid).flatMap(({ span, by, claims, input }): readonly Found[] => {
      if (beside(span, pileHeight) !== "above") return [];
      const [depthShown, pileShown] = [spanInPhrase("length", span), spanInPhrase("length", pileHeight)];
      return [
        {
          severity: "can't be true",
          claims: [pile.id, ...claims],
          figures: ["infill depth"],
          told: () => ({
            sentence: say`${by} the infill is ${depthShown} deep; the pile is ${pileShown} high.`,
            question: say`The infill you state comes to a depth of ${depthShown} in a pile of ${pileShown}. Please check both figures.`,
            working: {
              formula: "infill depth ≤ pile height",
              inputs: [input(), claimInput(bid, pile)],
              assumptions: [],
              source: "geometry",
            },
          }),
        },
      ];
    });
  },
};
