import { atLeastAsStrong } from "#lib/claim";
import { say } from "#lib/figure";
import { propertiesOf } from "../in-words";
import { claimInput } from "../inputs";
import type { Rule } from "../model";

/** What is more than said has a document that anybody can read. */
export const evidenceWithoutDocument: Rule = {
  id: "evidence-without-document",
  title: "Evidence without a document",
  holds: "claims that are more than stated against the documents they name",
  tolerance: "none",
  check: (bid) => {
    const claims = bid.claims
      .filter(({ evidence, document }) => atLeastAsStrong(evidence, "own-test") && document.trim() === "")
      .toSorted((one, other) => (one.id < other.id ? -1 : 1));
    if (claims.length === 0) return [];
    const what = propertiesOf(claims);
    return [
      {
        severity: "needs an answer",
        claims: claims.map(({ id }) => id),
        keyedBy: [],
        told: () => ({
          sentence: say`For ${what} a test, a report or a guarantee is given as evidence, and no document is named.`,
          question: say`Which document shows your figures for ${what}, and on which page?`,
          working: {
            formula: "evidence above “stated” → a document is named",
            inputs: claims.map((claim) => claimInput(bid, claim)),
            assumptions: [],
            source: "common practice, no source",
          },
        }),
      },
    ];
  },
};
