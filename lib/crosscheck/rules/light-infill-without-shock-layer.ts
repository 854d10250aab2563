import { bestClaim } from "#lib/claim";
import { intervalOfFigure, quantityInPhrase, say } from "#lib/figure";
import { usualInfillMass } from "#lib/infill";
import { claimInput, figureInput } from "../inputs";
import type { Rule } from "../model";

/** Little infill and nothing under the carpet: what then takes up impact, and what keeps the carpet down? */
export const lightInfillWithoutShockLayer: Rule = {
  id: "light-infill-without-shock-layer",
  title: "Light infill and no shock layer",
  holds: "the mass of the infill against what the trade calls light, where no shock layer lies below",
  tolerance: "none; what is light is a rule of thumb (common practice, no source)",
  check: (bid) => {
    const total = intervalOfFigure(bid.totalArealDensity);
    const found = bestClaim(bid.claims, { property: "shock-layer" });
    const none = found.ok && found.value.claim.value.kind === "choice" && found.value.claim.value.choice === "none";
    if (total === null || !none || total.high > usualInfillMass.allRubber.high) return [];
    const heavy = quantityInPhrase("arealDensity", usualInfillMass.heavyAbove);
    return [
      {
        severity: "needs an answer",
        claims: [],
        figures: ["infill mass"],
        told: () => ({
          sentence: say`The infill weighs ${quantityInPhrase("arealDensity", total)} and nothing lies under the carpet to take up impact. The trade calls an infill heavy above ${heavy} (common practice, no source).`,
          question: say`Which measured results on installed fields of this build, with their ages, show how it takes up impact as infill moves and how the carpet stays flat?`,
          working: {
            formula: "mass per area ≤ what an infill of rubber alone usually weighs, and no shock layer",
            inputs: [figureInput("Infill mass per area", bid.totalArealDensity), claimInput(bid, found.value.claim)],
            assumptions: ["What counts as light is a rule of thumb of the trade."],
            source: "common practice, no source",
          },
        }),
      },
    ];
  },
};
