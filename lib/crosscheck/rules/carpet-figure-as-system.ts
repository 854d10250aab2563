import { type Claim, type FamilyId, familyOf, methodOf, type StatedMethod } from "#lib/claim";
import { quantityInPhrase, say } from "#lib/figure";
import type { Interval } from "#lib/quantity";
import { claimInput } from "../inputs";
import type { CheckedBid, Rule } from "../model";
import { statedFigures } from "../stated-figures";

/** Methods that pass water through one part alone. */
const partsAlone: readonly FamilyId[] = ["permittivity", "shock-layer-type-test"];

/** A figure of the carpet alone does not show what infill, shock layer and base let through. */
export const carpetFigureAsSystem: Rule = {
  id: "carpet-figure-as-system",
  title: "A figure of one part given for the whole build",
  holds: "the method behind the infiltration rate of the system against methods that test one part alone",
  tolerance: "none; without a method it fires where the figure is the very one of the carpet alone",
  check: (bid) =>
    statedFigures(bid.claims, "system-infiltration").flatMap(({ claim, interval }) => {
      const part = partAloneBehind(bid, claim, interval);
      if (part === null) return [];
      const shown = quantityInPhrase("infiltrationRate", interval);
      return [
        {
          severity: "needs an answer" as const,
          claims: [claim.id, ...part.claims.map(({ id }) => id)],
          overClaims: [claim.id],
          told: () => ({
            sentence: say`The ${shown} given for the whole build ${part.because}. Infill, shock layer and base can let through less.`,
            question: say`What infiltration rate does the whole build show, with infill, shock layer and base, by which method and in which report?`,
            working: {
              formula: "method of a system figure = one that tests the whole build",
              inputs: [claim, ...part.claims].map((input) => claimInput(bid, input)),
              assumptions:
                part.claims.length === 0
                  ? []
                  : ["Two figures that agree to the last digit are taken to be one figure."],
              source: "derived from what the methods test",
            },
          }),
        },
      ];
    }),
};

type Part = Readonly<{ because: string; claims: readonly Claim[] }>;

function partAloneBehind(bid: CheckedBid, claim: Claim, { low, high }: Interval<"m/s">): Part | null {
  if (claim.method !== "not-stated") {
    const { designation, measuresLike } = methodOf(claim.method);
    if (!isPartAlone(claim.method)) return null;
    return { because: `rests on ${designation}, which ${familyOf(measuresLike).does}`, claims: [] };
  }
  const carpet = statedFigures(bid.claims, "carpet-infiltration").find(
    (part) => isPartAlone(part.claim.method) && isSame(part.interval.low, low) && isSame(part.interval.high, high),
  )?.claim;
  return carpet === undefined ? null : { because: "is the figure given for the carpet alone", claims: [carpet] };
}

const isPartAlone = (method: StatedMethod): boolean =>
  method !== "not-stated" && partsAlone.includes(methodOf(method).measuresLike);

/** The same number, whichever unit it was written in. */
const isSame = (one: number, other: number): boolean =>
  one === other || (Number.isFinite(one) && Math.abs(one - other) <= Math.abs(one) * 1e-9);
