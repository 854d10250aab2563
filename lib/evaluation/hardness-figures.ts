import { agedPoints, bestClaim, type Claim, comparability, type MethodId, ofAge, quantityOf } from "#lib/claim";
import { type Figure, intervalOfFigure, type Origin, unknown } from "#lib/figure";
import {
  type AgedLevel,
  type DepthGrid,
  depthMargin,
  explainChances,
  explainOutlook,
  type HardnessOutlook,
  hardnessChances,
  hardnessOutlook,
  type ImpactRequirement,
  outlookChoices,
  type SensitivityFacts,
  type StatedLevel,
  spotSensitivity,
} from "#lib/impact";
import { type InfillSystem, polymerShare } from "#lib/infill";
import { onFirstReading, workedOutOnReading } from "#lib/once";
import { type In, intervalOf } from "#lib/quantity";
import { claimedFigure } from "./claimed-figure";
import { ownDepthLevels } from "./levels-at-loss";
import type { Bid, HardnessFigures } from "./model";
import { weakest } from "./weakest";
import { worstPoint } from "./worst-point";

/** The rule of thumb speaks of the flat missile; every method that uses it the same way will do. */
const flatMissile: MethodId = "f355-a";

const originOf = (bid: Bid, claim: Claim): Origin => ({ kind: "claim", bid: bid.id, claim: claim.id });

function shockLayerOf(claims: readonly Claim[]): SensitivityFacts["shockLayer"] {
  const found = bestClaim(claims, { property: "shock-layer" });
  if (!found.ok || found.value.claim.value.kind !== "choice") return "not-stated";
  return found.value.claim.value.choice === "none" ? "none" : "present";
}

/** The least the infill may be deep; null where that is not known. */
function leastDepth(depth: Figure<"length">): In<"m"> | null {
  const low = intervalOfFigure(depth)?.low ?? null;
  return low !== null && low > 0 ? low : null;
}

const atHorizonOf = (outlook: HardnessOutlook): Figure<"impactLevel"> =>
  outlook.kind === "unknown"
    ? unknown("impactLevel", outlook.because)
    : (outlook.years.at(-1)?.level ??
      unknown("impactLevel", { kind: "missing-input", what: "the years to look ahead" }));

/** What else of the bid and the field bears on hardness. */
export type HardnessSetting = Readonly<{
  mineralShare: Figure<"fraction">;
  depth: Figure<"length">;
  hoursPerYear: number;
  /** Depths measured on an installed field of this bid; null where there are none. */
  depthGrid: DepthGrid | null;
}>;

/** How hard a bid's surface is and may become, from its own claims by the required method and the owner's assumptions. */
export function hardnessFigures(
  bid: Bid,
  system: InfillSystem | null,
  requirement: ImpactRequirement & Readonly<{ method: MethodId }>,
  { mineralShare, depth, hoursPerYear, depthGrid }: HardnessSetting,
): HardnessFigures {
  const { method } = requirement;
  const asNew = claimedFigure(
    bid.id,
    bid.claims,
    { property: "g-max", method, condition: ofAge({ kind: "new" }) },
    null,
  );
  const levelAsNew = intervalOfFigure(asNew.figure);
  const statedAsNew: StatedLevel | null =
    levelAsNew === null || asNew.claim === null ? null : { level: levelAsNew, from: originOf(bid, asNew.claim) };
  const points = agedPoints(bid.claims, "g-max", method, hoursPerYear);
  const stated = points.flatMap(({ years, claim }): readonly AgedLevel[] => {
    const quantity = quantityOf(claim, "g-max");
    if (quantity === null) return [];
    const field = claim.testField === "" ? null : claim.testField.toLowerCase();
    return [
      { years, level: intervalOf(quantity.reading), from: originOf(bid, claim), field, fields: claim.fieldCount },
    ];
  });
  // a level as new on a named field is that field's own; of all others the least favourable stands for the bid
  const later = stated.filter(({ years, field }) => years > 0 || field != null);
  const newIsAmong = later.some(({ from }) => from.kind === "claim" && from.claim === asNew.claim?.id);
  const outlook = hardnessOutlook({
    newLevel: newIsAmong ? null : statedAsNew,
    agedPoints: later,
    requirement,
    years: requirement.horizonYears,
  });
  const facts: SensitivityFacts = {
    method: comparability("g-max", flatMissile, method).kind === "comparable" ? flatMissile : method,
    level: levelAsNew,
    polymerShare: system === null ? null : polymerShare(system),
    shockLayer: shockLayerOf(bid.claims),
  };
  const own = ownDepthLevels(bid, method, depth);
  const sensitivity = spotSensitivity({
    facts,
    choice: requirement.depthSensitivity,
    levelsAtLoss: own.levels,
    shockLayer: outlookChoices(requirement).shockLayer,
  });
  // they take as long as the rest of the outlook, and few readers ask for them
  const chances = onFirstReading(() =>
    hardnessChances({
      ...{ stated, requirement, facts },
      mineralShare: intervalOfFigure(mineralShare),
      infillDepth: leastDepth(depth),
      levelsAtLoss: own.levels,
      depthGrid,
    }),
  );
  const margin = { stated: statedAsNew, sensitivity };
  const figures = {
    asNew: asNew.figure,
    asNewEvidence: asNew.evidence,
    asNewSpread: asNew.spread ?? null,
    worstPoint: worstPoint(bid, method, asNew),
    stated,
    outlook,
    atHorizon: atHorizonOf(outlook),
    atHorizonEvidence: weakest(points.map(({ claim }) => claim.evidence)),
    sensitivity,
    ownSensitivity: own.sensitivity,
    depthMargin: depthMargin({ ...margin, limit: requirement.limit.value }),
    softMargin: depthMargin({ ...margin, limit: requirement.targetWindow.low.value, side: "too-soft" }),
  };
  return workedOutOnReading(figures, {
    sentences: () => explainOutlook(outlook),
    chances,
    chanceSentences: () => explainChances(chances(), bid.letter),
  });
}
