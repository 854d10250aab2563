import { claimsFor, quantityOf } from "#lib/claim";
import { intervalOfFigure, quantityInPhrase, say } from "#lib/figure";
import { intervalOf } from "#lib/quantity";
import { claimInput, figureInput } from "../inputs";
import type { Rule } from "../model";

/** Room for figures that were rounded before they were written. */
const roundingShare = 0.01;

/** The components of an infill have to add up to the total that the bid states. */
export const componentsAgainstTotal: Rule = {
  id: "components-against-total",
  title: "The infill components do not add up to the stated total",
  holds: "the sum of the infill components against the total that the bid states",
  tolerance: "1 % for rounding (common practice, no source)",
  check: (bid) => {
    const sum = intervalOfFigure(bid.totalArealDensity);
    if (sum === null) return [];
    return claimsFor(bid.claims, "infill-total-areal-density").flatMap((claim) => {
      const quantity = quantityOf(claim, "infill-total-areal-density");
      if (quantity === null) return [];
      const stated = intervalOf(quantity.reading);
      if (sum.low <= stated.high * (1 + roundingShare) && stated.low <= sum.high * (1 + roundingShare)) return [];
      const [sumShown, statedShown] = [sum, stated].map((interval) => quantityInPhrase("arealDensity", interval));
      if (sumShown === undefined || statedShown === undefined) return [];
      return [
        {
          severity: "can't be true",
          claims: [claim.id],
          overClaims: stated.low > sum.high ? [claim.id] : [],
          told: () => ({
            sentence: say`The components add up to ${sumShown}; the bid states a total of ${statedShown}. Both can’t be true.`,
            question: say`Your bid states a total infill of ${statedShown}, while its components add up to ${sumShown}. Which is right, and which component changes?`,
            working: {
              formula: "stated total = Σ mass per area of the components",
              inputs: [figureInput("Sum of the components", bid.totalArealDensity), claimInput(bid, claim)],
              assumptions: ["Figures may differ by 1 % through rounding (common practice, no source)."],
              source: "conservation of mass",
            },
          }),
        },
      ];
    });
  },
};
