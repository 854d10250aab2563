import { intervalOfFigure, say } from "#lib/figure";
import { claimInput, figureInput } from "../inputs";
import type { Rule } from "../model";
import { beside, spanInPhrase, widened } from "../span";
import { statedAsNew } from "../stated-as-new";

/** Loose density varies with how a bed is poured and has settled, so depths that differ by less go together. */
const depthShare = 0.2;

/** The depth that mass and loose density give is near the depth that the bid states. */
export const depthAgainstStated: Rule = {
  id: "depth-against-stated",
  title: "The stated infill depth is far from what its mass gives",
  holds: "the stated infill depth against the depth that mass and loose density give",
  tolerance: "20 % of the derived depth, a rule of thumb (common practice, no source)",
  check: (bid) => {
    const derived = intervalOfFigure(bid.infillDepth);
    const stated = statedAsNew(bid, "infill-depth");
    if (derived === null || stated === null) return [];
    const side = beside(stated.span, widened(derived, depthShare));
    if (side === "in common") return [];
    const [statedShown, derivedShown] = [spanInPhrase("length", stated.span), spanInPhrase("length", derived)];
    return [
      {
        severity: "needs an answer",
        claims: [stated.claim.id],
        figures: ["infill depth"],
        overClaims: side === "above" ? [stated.claim.id] : [],
        told: () => ({
          sentence: say`By mass and loose density the infill is ${derivedShown} deep; the bid states ${statedShown}. They differ by more than 20 %, a rule of thumb (common practice, no source).`,
          question: say`Your infill comes to a depth of ${derivedShown} by its mass and loose density, while you state ${statedShown}. Which masses, loose densities and depth hold at handover, and how was the depth measured?`,
          working: {
            formula: "stated depth = Σ mass per area ÷ loose density, within 20 %",
            inputs: [figureInput("Infill depth, loose as poured", bid.infillDepth), claimInput(bid, stated.claim)],
            assumptions: [
              "20 % is a rule of thumb (common practice, no source).",
              "The depth from mass is that of a bed as poured; a settled bed is shallower.",
            ],
            source: "derived from the definition of bulk density",
          },
        }),
      },
    ];
  },
};
