import { type Claim, methodOf, type PropertyId, propertyOf } from "#lib/claim";
import { say } from "#lib/figure";
import { propertiesOf } from "../in-words";
import { claimInput } from "../inputs";
import type { Rule } from "../model";

/** Where methods measure in unlike ways, a figure without its method can't be compared. */
export const methodNotStated: Rule = {
  id: "method-not-stated",
  title: "Figures without their method",
  holds: "figures that depend on the way of testing against the methods they name",
  tolerance: "none; G-max without a method is asked about by itself",
  check: (bid) => {
    const claims = bid.claims
      .filter((claim) => claim.method === "not-stated" && dependsOnMethod(claim))
      .toSorted((one, other) => (one.id < other.id ? -1 : 1));
    if (claims.length === 0) return [];
    const what = propertiesOf(claims);
    return [
      {
        severity: "note",
        claims: claims.map(({ id }) => id),
        keyedBy: [],
        told: () => ({
          sentence: say`For ${what} no test method is stated. These can be tested in unlike ways that do not compare.`,
          question: say`Which test method stands behind your figures for ${what}, and in which report and on which page is each?`,
          working: {
            formula: "figure that can be tested in unlike ways → a method is stated",
            inputs: claims.map((claim) => claimInput(bid, claim)),
            assumptions: [],
            source: "derived from the methods of the register: those of one property measure in more than one way",
          },
        }),
      },
    ];
  },
};

/** G-max has a rule of its own; a drop height is a setting of the test that its criterion names. */
const settledElsewhere: readonly PropertyId[] = ["g-max", "hic-drop-height"];

/** Whether the methods behind a property measure in more than one way. */
function dependsOnMethod({ property, value }: Claim): boolean {
  if (value.kind !== "quantity" || settledElsewhere.includes(property)) return false;
  return new Set(propertyOf(property).methods.map((method) => methodOf(method).measuresLike)).size > 1;
}
