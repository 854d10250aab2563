import { type Claim, claimsFor, familyOf, type MethodId, methodOf, type StatedMethod } from "#lib/claim";
import { say } from "#lib/figure";
import { claimInput } from "../inputs";
import type { CheckedBid, Rule } from "../model";
import { plainName } from "../same-test";

/** A critical fall height is read off the head injury criterion, which only a head-form gives. */
export const fallHeightNeedsItsMissile: Rule = {
  id: "fall-height-needs-its-missile",
  title: "A critical fall height from a test that gives none",
  holds: "the method or report behind each critical fall height against the missile that such a height needs",
  tolerance: "none: another missile gives no head injury criterion",
  check: (bid) =>
    claimsFor(bid.claims, "critical-fall-height").flatMap((claim) => {
      const behind = otherMissileBehind(bid, claim);
      if (behind === null) return [];
      const { designation } = methodOf(behind.method);
      return [
        {
          severity: "needs an answer" as const,
          claims: [claim.id, ...behind.levels.map(({ id }) => id)],
          keyedBy: [claim.id],
          overClaims: [claim.id],
          told: () => ({
            sentence: say`The critical fall height rests on ${designation}, which ${familyOf(methodOf(behind.method).measuresLike).does}. A critical fall height takes a head-sized missile and the head injury criterion.`,
            question: say`Which test with a head-sized missile, missile E or the head-form of EN 1177, shows the stated critical fall height, and in which report?`,
            working: {
              formula: "method of a critical fall height = one that drops a head-sized missile",
              inputs: [claim, ...behind.levels].map((input) => claimInput(bid, input)),
              assumptions:
                behind.levels.length === 0
                  ? []
                  : ["The document gives levels by this method and none with a head-sized missile."],
              source: "derived from the definition: the height at which the head injury criterion reaches 1000",
            },
          }),
        },
      ];
    }),
};

type Behind = Readonly<{ method: MethodId; levels: readonly Claim[] }>;

/** The method of the claim, or where it names none the one that its own document uses for impact levels. */
function otherMissileBehind(bid: CheckedBid, claim: Claim): Behind | null {
  if (claim.method !== "not-stated") return givesCriterion(claim.method) ? null : { method: claim.method, levels: [] };
  const document = plainName(claim.document);
  if (document === "") return null;
  const levels = claimsFor(bid.claims, "g-max")
    .filter((level) => plainName(level.document) === document && level.method !== "not-stated")
    .toSorted((one, other) => (one.id < other.id ? -1 : 1));
  const [method] = levels.map((level) => level.method);
  if (method === undefined || method === "not-stated" || levels.some((level) => givesCriterion(level.method)))
    return null;
  return { method, levels };
}

const givesCriterion = (method: StatedMethod): boolean =>
  method !== "not-stated" && familyOf(methodOf(method).measuresLike).missile === "e";
