import { claimsFor, comparability } from "#lib/claim";
import type { Rule } from "./model";

/** An impact level by another missile or drop height can't be held against the owner's limit, nor against other bids. */
export const impactByAnotherMethod: Rule = ({ claims, impactMethod }) =>
  claimsFor(claims, "g-max").flatMap((claim) => {
    const verdict = comparability("g-max", impactMethod, claim.method);
    if (verdict.kind === "comparable") return [];
    const { reason, ask } = verdict;
    return [{ kind: "impact-by-another-method", severity: "needs an answer", claim: claim.id, reason, ask } as const];
  });
