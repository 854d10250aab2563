import { intervalOfFigure, say } from "#lib/figure";
import { formatInterval } from "#lib/quantity";
import { claimInput, constantInput, figureInput } from "../inputs";
import type { Rule } from "../model";
import { beside, quotient, spanInPhrase, tagged } from "../span";
import { statedAsNew } from "../stated-as-new";

/**
 * Infill depth as a share of the pile height on fields as they are usually built.
 * @source common practice, no source; two fields surveyed by Penn State University in 2012 had 69 % and 57 %
 */
const usualFill = tagged("fraction", { low: 0.5, high: 0.85 });
const usualText = formatInterval("fraction", usualFill, "us");

/** Very little or very much of the pile filled: worth knowing, since free pile and cushion both depend on it. */
export const fillRatioUnusual: Rule = {
  id: "fill-ratio-unusual",
  title: "An unusual share of the pile is filled",
  holds: "infill depth as a share of the pile height against what is usual",
  tolerance: `none beyond the usual ${usualText}, a rule of thumb (common practice, no source)`,
  check: (bid) => {
    const pile = statedAsNew(bid, "pile-height");
    const stated = statedAsNew(bid, "infill-depth");
    const depth = stated?.span ?? intervalOfFigure(bid.infillDepth);
    if (pile === null || depth === null || !(pile.span.high > 0)) return [];
    const ratio = quotient(depth, pile.span);
    // more than the whole pile is another finding
    if (ratio.low > 1 || beside(ratio, usualFill) === "in common") return [];
    const [ratioShown, depthShown] = [spanInPhrase("fraction", ratio), spanInPhrase("length", depth)];
    return [
      {
        severity: "note",
        claims: [pile.claim.id, ...(stated === null ? [] : [stated.claim.id])],
        figures: ["infill depth"],
        told: () => ({
          sentence: say`The infill fills ${ratioShown} of the pile; usual is ${usualText}, a rule of thumb (common practice, no source).`,
          question: say`The infill of ${depthShown} fills ${ratioShown} of your pile of ${spanInPhrase("length", pile.span)}. On which installed fields has this been built, and how does their pile stand after some years?`,
          working: {
            formula: "fill ratio = infill depth ÷ pile height",
            inputs: [
              stated === null
                ? figureInput("Infill depth, loose as poured", bid.infillDepth)
                : claimInput(bid, stated.claim),
              claimInput(bid, pile.claim),
              constantInput("Usual fill ratio", usualText),
            ],
            assumptions: ["What is usual is a rule of thumb (common practice, no source)."],
            source: "common practice, no source; fields surveyed by Penn State University in 2012 had 69 % and 57 %",
          },
        }),
      },
    ];
  },
};
