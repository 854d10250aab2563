import { type Claim, compareEditions, methodOf } from "#lib/claim";
import { say } from "#lib/figure";
import { propertyInSentence } from "../in-words";
import { claimInput, constantInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";

/** A report by an edition that was changed since may give another figure, or judge it by other limits. */
export const editionSuperseded: Rule = {
  id: "edition-superseded",
  title: "A report by an edition that was changed since",
  holds: "the edition of the method behind each claim against the newest edition that the register knows",
  tolerance: "none; the register does not claim to be complete, and a report that names no edition is passed over",
  check: (bid) => bid.claims.flatMap((claim) => foundFor(bid, claim)),
};

function foundFor(bid: CheckedBid, claim: Claim): readonly Found[] {
  if (claim.method === "not-stated") return [];
  const compared = compareEditions(claim.method, null, claim.edition.year);
  if (compared.kind === "alike") return [];
  const { designation } = methodOf(claim.method);
  const [what, reason] = [propertyInSentence(claim), compared.kind === "unlike" ? compared.reason : compared.sentence];
  return [
    {
      severity: compared.kind === "unlike" ? "needs an answer" : "note",
      claims: [claim.id],
      told: () => ({
        sentence: say`For ${what}: ${reason}`,
        question: say`Is there a result for ${what} by the current edition of ${designation}, and in which report?`,
        working: {
          formula: "edition of the report = newest edition known, or one without a change between them",
          inputs: [claimInput(bid, claim), constantInput("Edition that the report names", claim.edition.text)],
          assumptions: ["The newest edition known here need not be the newest there is."],
          source: "the register of editions; each change there names its source",
        },
      }),
    },
  ];
}
