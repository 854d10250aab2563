import { claimsFor, comparability, methodOf } from "#lib/claim";
import { say } from "#lib/figure";
import { claimInput, constantInput } from "../inputs";
import type { Rule } from "../model";

/** An impact level by another missile or drop height can't be held against the owner's limit, nor against other bids. */
export const impactByAnotherMethod: Rule = {
  id: "impact-by-another-method",
  title: "An impact level by another method",
  holds: "the method behind each impact level against the method of the requirements",
  tolerance: "none: figures of unlike missiles or drop heights never compare",
  check: (bid) =>
    claimsFor(bid.claims, "g-max").flatMap((claim) => {
      const verdict = comparability("g-max", bid.impact.method, claim.method);
      if (verdict.kind !== "not-comparable") return [];
      return [
        {
          severity: "needs an answer" as const,
          claims: [claim.id],
          told: () => ({
            sentence: say`${verdict.reason}`,
            question: say`${verdict.ask}`,
            working: {
              formula:
                "method of the claim = method of the requirement, or one that drops the same missile from the same height",
              inputs: [
                claimInput(bid, claim),
                constantInput("Method of the requirements", methodOf(bid.impact.method).designation),
              ],
              assumptions: [],
              source: "derived from the missiles and drop heights of the methods",
            },
          }),
        },
      ];
    }),
};
