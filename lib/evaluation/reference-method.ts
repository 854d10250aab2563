import { type Claim, comparability, type MethodId, matchMethod, type PropertyId } from "#lib/claim";
import { claimedMeasures } from "./measures";
import type { Requirements } from "./model";

/**
 * The method that figures of a property are held against: the one the owner asks for by a requirement or a criterion, else
 * the one by which the most of its claims compare. Null where neither names one.
 */
export function referenceMethod(
  property: PropertyId,
  { criteria, impact }: Requirements,
  claims: readonly Claim[],
): MethodId | null {
  const required = property === "g-max" ? matchMethod(impact.method) : null;
  if (required !== null && required !== "not-stated") return required;
  const asked = criteria.flatMap(({ measure }) => {
    const claimed = claimedMeasures.find(({ id }) => id === measure.id);
    return claimed?.property === property && claimed.method !== null ? [claimed.method] : [];
  });
  return asked[0] ?? mostUsed(claims);
}

/** The method by which the most claims can be compared; the first named where several have as many. */
function mostUsed(claims: readonly Claim[]): MethodId | null {
  const named = claims.flatMap(({ method }) => (method === "not-stated" ? [] : [method]));
  const followers = (method: MethodId) =>
    claims.filter((claim) => comparability(claim.property, method, claim.method).kind === "comparable").length;
  return named.reduce<MethodId | null>(
    (best, method) => (best === null || followers(method) > followers(best) ? method : best),
    null,
  );
}
