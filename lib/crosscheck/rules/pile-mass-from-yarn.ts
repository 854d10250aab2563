import { say } from "#lib/figure";
import { claimInput, constantInput } from "../inputs";
import type { Rule } from "../model";
import { beside, productOf, propertyInPhrase, quotient, type Span, widened } from "../span";
import { statedAsNew } from "../stated-as-new";

/** How far a stated pile mass may lie from what gauge, stitch rate, pile height and yarn give. */
const room = { below: 0.05, above: 0.2 } as const;

const one: Span = { low: 1, high: 1 };
/** Each tuft has two legs of the pile height. */
const legs: Span = { low: 2, high: 2 };

/** Rows and stitches per area, each stitch with two legs of yarn, give the mass of the pile. */
export const pileMassFromYarn: Rule = {
  id: "pile-mass-from-yarn",
  title: "The pile mass does not follow from the yarn",
  holds: "the stated pile mass against gauge, stitch rate, pile height and yarn linear density",
  tolerance:
    "5 % below for rounding, 20 % above for curled fibre and yarn in the backing, both rules of thumb (common practice, no source)",
  check: (bid) => {
    const mass = statedAsNew(bid, "pile-mass");
    const gauge = statedAsNew(bid, "gauge");
    const stitches = statedAsNew(bid, "stitch-rate");
    const pile = statedAsNew(bid, "pile-height");
    const yarn = statedAsNew(bid, "yarn-linear-density");
    if (mass === null || gauge === null || stitches === null || pile === null || yarn === null) return [];
    const rowsPerMetre = quotient(one, gauge.span);
    const derived = productOf([rowsPerMetre, stitches.span, legs, pile.span, yarn.span]);
    const below = beside(mass.span, widened(derived, room.below)) === "below";
    const above = beside(mass.span, widened(derived, room.above)) === "above";
    if (!below && !above) return [];
    const [massShown, derivedShown] = [
      propertyInPhrase("pile-mass", mass.span),
      propertyInPhrase("pile-mass", derived),
    ];
    const used = [gauge, stitches, pile, yarn].map(({ claim }) => claim);
    return [
      {
        severity: below ? "needs an answer" : "note",
        claims: [mass.claim.id, ...used.map(({ id }) => id)],
        overClaims: above ? [mass.claim.id] : [],
        told: () => ({
          sentence: below
            ? say`Gauge, stitch rate, pile height and yarn give a pile of at least ${derivedShown}; the bid states ${massShown}. So much yarn can’t weigh less.`
            : say`Gauge, stitch rate, pile height and yarn give a pile of ${derivedShown}; the bid states ${massShown}. Curled fibre or yarn in the backing may be counted with it.`,
          question: say`Your gauge, stitch rate, pile height and yarn give a pile of ${derivedShown}, while you state ${massShown}. Which figures hold, and is curled fibre or yarn in the backing counted?`,
          working: {
            formula: "pile mass = 1 ÷ gauge × stitches per length × 2 × pile height × yarn linear density",
            inputs: [
              ...used.map((claim) => claimInput(bid, claim)),
              claimInput(bid, mass.claim),
              constantInput("Legs of a tuft", "2, each as long as the pile is high"),
            ],
            assumptions: [
              "All tufts are of one yarn and one height.",
              "The stitch rate counts stitches along a row.",
              "Yarn that is curled or lies in the backing is left out, so the pile may weigh more and hardly less.",
              "5 % below and 20 % above are rules of thumb (common practice, no source).",
            ],
            source: "derived from geometry and the definition of linear density",
          },
        }),
      },
    ];
  },
};
