import { type Claim, comparability } from "#lib/claim";
import { quantityInPhrase, say } from "#lib/figure";
import { claimInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { basisOfLevel } from "../points-or-average";
import { sameCondition } from "../same-test";
import { statedFigures } from "../stated-figures";

/** An average can keep a limit while a single spot does not; the owner's limit holds at every point. */
export const singleFigureFromAverage: Rule = {
  id: "single-figure-from-average",
  title: "An average against a limit for every point",
  holds: "what each impact level is said to be, average or every point, against a limit that holds at every point",
  tolerance: "none; an average at or above the limit is left to the limit itself",
  check: (bid) =>
    statedFigures(bid.claims, "g-max").flatMap((level) => {
      const isWithin = level.interval.low < bid.impact.limit.value;
      const isAverage = isCompared(bid, level.claim) && basisOfLevel(bid, level.claim) === "average";
      return isWithin && isAverage && !hasHighestPoint(bid, level.claim) ? [foundFor(bid, level)] : [];
    }),
};

const isCompared = (bid: CheckedBid, { property, method }: Claim): boolean =>
  comparability(property, bid.impact.method, method).kind === "comparable";

/** Whether the bid gives the highest point of the same condition beside the average. */
const hasHighestPoint = (bid: CheckedBid, level: Claim): boolean =>
  statedFigures(bid.claims, "g-max-highest-point").some(
    ({ claim }) => isCompared(bid, claim) && sameCondition(claim, level),
  );

function foundFor(bid: CheckedBid, { claim, interval }: ReturnType<typeof statedFigures<"g-max">>[number]): Found {
  const [levelShown, limitShown] = [
    quantityInPhrase("impactLevel", interval),
    quantityInPhrase("impactLevel", bid.impact.limit.value),
  ];
  return {
    severity: "needs an answer",
    claims: [claim.id],
    told: () => ({
      sentence: say`The stated ${levelShown} is an average of the test points; the limit of ${limitShown} holds at every point.`,
      question: say`Your G-max of ${levelShown} is an average. What was the highest level at a single point, at how many points was tested, and can you send the single values?`,
      working: {
        formula: "highest level of all points < limit; the average alone does not show it",
        inputs: [
          claimInput(bid, claim),
          {
            label: "Limit at every point",
            text: bid.impact.limit.asEntered,
            from: { kind: "requirements", field: "impact.limit" },
          },
        ],
        assumptions: [],
        source: `the limit: ${bid.impact.limitSource}; an average is at most the highest of its values (arithmetic)`,
      },
    }),
  };
}
