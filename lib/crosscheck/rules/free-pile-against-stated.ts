import { intervalOfFigure, say } from "#lib/figure";
import { inUnit, measured } from "#lib/quantity";
import { claimInput, constantInput, figureInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { beside, difference, notNegative, type Span, spanInPhrase, widened } from "../span";
import { type Stated, statedAsNew } from "../stated-as-new";

/** Half a millimetre for each of the three figures, in m. */
const rounding = measured("length", 1.5, "mm");
const roundingText = `${inUnit("length", rounding, "in").toFixed(2)} in (1.5 mm)`;

/** How far a depth from mass and loose density may be from a measured one. */
const depthShare = 0.2;

/** Pile height less infill depth has to leave the free pile that the bid states. */
export const freePileAgainstStated: Rule = {
  id: "free-pile-against-stated",
  title: "Pile, infill depth and free pile do not fit each other",
  holds: "pile height less infill depth against the stated free pile height",
  tolerance: `${roundingText} for rounding between stated figures; 20 % of a depth that is derived from mass, a rule of thumb (common practice, no source)`,
  check: (bid) => {
    const pile = statedAsNew(bid, "pile-height");
    const free = statedAsNew(bid, "free-pile-height");
    if (pile === null || free === null) return [];
    const depth = statedAsNew(bid, "infill-depth");
    return depth === null ? againstDerived(bid, pile, free) : againstStated(bid, pile, free, depth);
  },
};

function againstStated(bid: CheckedBid, pile: Stated, free: Stated, depth: Stated): readonly Found[] {
  const left = difference(pile.span, notNegative(depth.span));
  const side = beside(free.span, { low: left.low - rounding, high: left.high + rounding });
  if (side === "in common") return [];
  const [pileShown, depthShown, freeShown] = shown(pile.span, depth.span, free.span);
  const tooLong = side === "above";
  const verdict = tooLong
    ? "Together that is more than the pile, so not all three can be true."
    : "That leaves part of the pile out.";
  return [
    {
      severity: tooLong ? "can't be true" : "needs an answer",
      claims: [pile.claim.id, depth.claim.id, free.claim.id],
      told: () => ({
        sentence: say`The bid states a pile of ${pileShown}, an infill depth of ${depthShown} and a free pile of ${freeShown}. ${verdict}`,
        question: say`You state a pile of ${pileShown}, an infill depth of ${depthShown} and a free pile of ${freeShown}. Which of the three changes, and were all of them measured on the same field or sample?`,
        working: {
          formula: "free pile height = pile height − infill depth",
          inputs: [
            claimInput(bid, pile.claim),
            claimInput(bid, depth.claim),
            claimInput(bid, free.claim),
            constantInput("Room for rounding", roundingText),
          ],
          assumptions: ["The pile stands upright; fibre that leans stands less high above the infill, never higher."],
          source: "geometry",
        },
      }),
    },
  ];
}

function againstDerived(bid: CheckedBid, pile: Stated, free: Stated): readonly Found[] {
  const depth = intervalOfFigure(bid.infillDepth);
  if (depth === null) return [];
  const left = difference(pile.span, notNegative(widened(depth, depthShare)));
  if (beside(free.span, { low: left.low - rounding, high: left.high + rounding }) === "in common") return [];
  const [pileShown, depthShown, freeShown] = shown(pile.span, depth, free.span);
  return [
    {
      severity: "needs an answer",
      claims: [pile.claim.id, free.claim.id],
      figures: ["infill depth"],
      told: () => ({
        sentence: say`By its mass the infill is ${depthShown} deep in a pile of ${pileShown}; the bid states a free pile of ${freeShown}. That is hard to bring together.`,
        question: say`Your infill comes to a depth of ${depthShown} by its mass, in a pile of ${pileShown}. How deep is it at handover, and how does the stated free pile of ${freeShown} come about?`,
        working: {
          formula: "free pile height = pile height − infill depth, with the depth from mass within 20 %",
          inputs: [
            claimInput(bid, pile.claim),
            figureInput("Infill depth, loose as poured", bid.infillDepth),
            claimInput(bid, free.claim),
            constantInput("Room for rounding", roundingText),
          ],
          assumptions: ["The pile stands upright.", "20 % is a rule of thumb (common practice, no source)."],
          source: "geometry, with a depth derived from the definition of bulk density",
        },
      }),
    },
  ];
}

const shown = (pile: Span, depth: Span, free: Span) =>
  [spanInPhrase("length", pile), spanInPhrase("length", depth), spanInPhrase("length", free)] as const;
