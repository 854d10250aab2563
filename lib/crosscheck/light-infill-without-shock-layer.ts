import { bestClaim } from "#lib/claim";
import { intervalOfFigure } from "#lib/figure";
import { usualInfillMass } from "#lib/infill";
import type { Rule } from "./model";

/** Little infill and nothing under the carpet: what then takes up impact, and what keeps the carpet down? */
export const lightInfillWithoutShockLayer: Rule = ({ claims, totalArealDensity }) => {
  const total = intervalOfFigure(totalArealDensity);
  const found = bestClaim(claims, { property: "shock-layer" });
  const none = found.ok && found.value.claim.value.kind === "choice" && found.value.claim.value.choice === "none";
  if (total === null || !none || total.high > usualInfillMass.allRubber.high) return [];
  return [
    {
      kind: "light-infill-without-shock-layer",
      severity: "needs an answer",
      total,
      heavyAbove: usualInfillMass.heavyAbove,
    },
  ];
};
