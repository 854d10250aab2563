import { type Claim, comparability, formatCondition, methodOf } from "#lib/claim";
import { type Phrase, quantityInPhrase, say } from "#lib/figure";
import { inUnit, measured } from "#lib/quantity";
import { claimInput } from "../inputs";
import type { CheckedBid, Found, Rule, Severity } from "../model";
import { basisOfGuarantee, basisOfLevel, type LevelBasis } from "../points-or-average";
import { sameWeather } from "../same-test";
import { type StatedFigure, statedFigures } from "../stated-figures";

type Limit = StatedFigure<"warranty-hardness-limit">;
type Level = StatedFigure<"g-max" | "g-max-highest-point">;

/** A guaranteed hardness has to be one that the bid's own levels can keep, as new and through the years it covers. */
export const guaranteeAgainstAged: Rule = {
  id: "guarantee-against-aged",
  title: "A guaranteed hardness below the bid’s own levels",
  holds: "the hardness that the warranty promises not to exceed against the levels that the bid states, new and aged",
  tolerance: "none: it fires only where every reading of the level is above the highest reading of the guarantee",
  check: (bid) =>
    statedFigures(bid.claims, "warranty-hardness-limit").flatMap((limit) =>
      [...statedFigures(bid.claims, "g-max"), ...statedFigures(bid.claims, "g-max-highest-point")].flatMap((level) =>
        foundFor(bid, limit, level),
      ),
    ),
};

function foundFor(bid: CheckedBid, limit: Limit, level: Level): readonly Found[] {
  const method = limit.claim.method;
  if (method === "not-stated" || level.interval.low <= limit.interval.high) return [];
  if (comparability(level.claim.property, method, level.claim.method).kind !== "comparable") return [];
  const [guaranteed, stated] = [basisOfGuarantee(bid, limit.claim), basisOfLevel(bid, level.claim)];
  // the average of a field may keep a guarantee that its hardest point does not
  if (guaranteed === "average" && stated === "every point") return [];
  const years = yearsOf(level.claim);
  if (!sameWeather(limit.claim, level.claim) || years === null || years > warrantyYears(bid)) return [];
  const sameBasis = guaranteed === "every point" || stated === "average";
  const severity: Severity = years === 0 && sameBasis ? "can't be true" : "needs an answer";
  const [limitShown, levelShown] = [
    quantityInPhrase("impactLevel", limit.interval.high),
    quantityInPhrase("impactLevel", level.interval),
  ];
  const condition = formatCondition(level.claim.condition);
  return [
    {
      severity,
      claims: [limit.claim.id, level.claim.id],
      overClaims: [limit.claim.id],
      told: () => ({
        sentence: say`The warranty promises at most ${limitShown}; in the condition “${condition}” the bid itself states ${levelShown} by a method that compares. ${terms(method, guaranteed)}`,
        question: say`Your warranty promises at most ${limitShown}, while your bid states ${levelShown} in the condition “${condition}”. How is the promise kept, with which device is it tested, and does it hold at every point or on average?`,
        working: {
          formula: "stated level ≤ guaranteed level, by one method and within the years of the warranty",
          inputs: [claimInput(bid, limit.claim), claimInput(bid, level.claim)],
          assumptions: [
            ...(sameBasis
              ? []
              : ["Nobody says that both figures are averages, or that the guarantee holds at every point."]),
            ...(years === 0
              ? []
              : ["The aged level may be from another field; the warranty is taken to run through that age."]),
          ],
          source: "derived: a level above its own guarantee does not keep it",
        },
      }),
    },
  ];
}

function terms(method: Parameters<typeof methodOf>[0], basis: LevelBasis): Phrase {
  const device = `The guarantee names ${methodOf(method).designation}`;
  switch (basis) {
    case "every point":
      return say`${device} and holds at every point.`;
    case "average":
      return say`${device} and holds for the average.`;
    case "not said":
      return say`${device}; whether it holds at every point or on average is not said.`;
  }
}

function yearsOf({ condition: { age } }: Claim): number | null {
  if (age.kind === "new") return 0;
  return age.kind === "aged" ? age.years : null;
}

/** The longest warranty that the bid may be read to give; no end where it states none. */
function warrantyYears(bid: CheckedBid): number {
  const ends = statedFigures(bid.claims, "warranty-years").map(({ interval }) =>
    Number.isFinite(interval.high) ? inUnit("time", measured("time", interval.high), "year") : Number.POSITIVE_INFINITY,
  );
  return ends.length === 0 ? Number.POSITIVE_INFINITY : Math.max(...ends);
}
