import { say } from "#lib/figure";
import { claimInput } from "../inputs";
import type { Rule } from "../model";
import { beside, notNegative, propertyInPhrase, sumOf, widened } from "../span";
import { statedAsNew } from "../stated-as-new";

/** Room for four figures that were each rounded before they were written. */
const roundingShare = 0.02;

const parts = ["pile-mass", "primary-backing-mass", "secondary-backing-mass"] as const;

/** Pile and backings have to add up to the total mass of the carpet. */
export const carpetMassSum: Rule = {
  id: "carpet-mass-sum",
  title: "Pile and backings do not add up to the carpet",
  holds: "pile mass and backing masses against the total carpet mass that the bid states",
  tolerance: "2 % for rounding (common practice, no source)",
  check: (bid) => {
    const total = statedAsNew(bid, "carpet-total-mass");
    const stated = parts.map((part) => statedAsNew(bid, part)).filter((part) => part !== null);
    if (total === null || stated.length === 0) return [];
    const sum = sumOf(stated.map(({ span }) => notNegative(span)));
    const side = beside(sum, widened(total.span, roundingShare));
    // a sum of some of the parts may well lie below the total
    if (side === "in common" || (side === "below" && stated.length < parts.length)) return [];
    const [sumShown, totalShown] = [
      propertyInPhrase("carpet-total-mass", sum),
      propertyInPhrase("carpet-total-mass", total.span),
    ];
    const named =
      stated.length === parts.length
        ? "Pile, primary and secondary backing"
        : "The parts of the carpet that are stated";
    const verdict =
      side === "above" ? "Both can’t be true." : "A further layer would have to make up the rest, and none is stated.";
    return [
      {
        severity: side === "above" ? "can't be true" : "needs an answer",
        claims: [total.claim.id, ...stated.map(({ claim }) => claim.id)],
        overClaims: side === "below" ? [total.claim.id] : [],
        told: () => ({
          sentence: say`${named} add up to ${sumShown}; the bid states a carpet of ${totalShown} in total. ${verdict}`,
          question: say`Your bid states a carpet of ${totalShown} in total, while its stated parts add up to ${sumShown}. Which figure changes, or which layer is not listed?`,
          working: {
            formula: "total carpet mass = pile mass + primary backing mass + secondary backing mass",
            inputs: [...stated.map(({ claim }) => claimInput(bid, claim)), claimInput(bid, total.claim)],
            assumptions: [
              "Infill is not part of the carpet.",
              "Figures may differ by 2 % through rounding (common practice, no source).",
            ],
            source: "conservation of mass",
          },
        }),
      },
    ];
  },
};
