import { claimsFor, comparability, quantityOf } from "#lib/claim";
import { say } from "#lib/figure";
import { intervalOf, measured } from "#lib/quantity";
import { claimInput, constantInput, inBoth } from "../inputs";
import type { Rule } from "../model";
import { beside, type Span, spanInPhrase } from "../span";

/** Usual least forces by ASTM D1335. @source from memory: 8 lbf in specifications, 6.8 lbf in an older guideline */
const floors = { usual: measured("force", 8, "lbf"), older: measured("force", 6.8, "lbf") } as const;
const source = "from memory: 8 lbf is usual in specifications, 6.8 lbf stood in an older guideline";

/** A tuft bind below what specifications usually ask for. */
export const tuftBindLow: Rule = {
  id: "tuft-bind-low",
  title: "A tuft bind below the usual floor",
  holds: "tuft bind by ASTM D1335 against the least force that specifications usually ask for",
  tolerance: "none; the floors are from memory",
  check: (bid) =>
    claimsFor(bid.claims, "tuft-bind").flatMap((claim) => {
      const quantity = quantityOf(claim, "tuft-bind");
      if (quantity === null || comparability("tuft-bind", "d1335", claim.method).kind !== "comparable") return [];
      const stated = intervalOf(quantity.reading);
      if (!isBelow(stated, floors.usual)) return [];
      const belowOlder = isBelow(stated, floors.older);
      const floor = belowOlder ? floors.older : floors.usual;
      const [statedShown, floorShown] = [spanInPhrase("force", stated), spanInPhrase("force", only(floor))];
      const whose = belowOlder ? "an older guideline asked for" : "specifications usually ask for";
      return [
        {
          severity: belowOlder ? ("needs an answer" as const) : ("note" as const),
          claims: [claim.id],
          sentence: say`The bid states a tuft bind of ${statedShown}; ${whose} at least ${floorShown} (from memory).`,
          question: say`You state a tuft bind of ${statedShown} by ASTM D1335. Is that the lowest or the mean of the tufts, on which sample, and what does the warranty say of tufts that come out?`,
          working: {
            formula: "tuft bind ≥ usual floor",
            inputs: [
              claimInput(bid, claim),
              constantInput("Usual floor", inBoth("force", only(floors.usual))),
              constantInput("Floor of an older guideline", inBoth("force", only(floors.older))),
            ],
            assumptions: ["Only figures by ASTM D1335 are held against these floors."],
            source,
          },
        },
      ];
    }),
};

const only = <V extends number>(value: V) => ({ low: value, high: value });

const isBelow = (stated: Span, floor: number): boolean => beside(stated, only(floor)) === "below";
