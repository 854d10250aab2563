import { bestClaim, type MethodId, ofAge } from "#lib/claim";
import { figureFromInterval, intervalOfFigure } from "#lib/figure";
import type { In } from "#lib/quantity";
import { claimInput } from "./claim-in-words";
import { type ClaimedFigure, claimedFigure, type EvidencedFigure } from "./claimed-figure";
import type { Bid } from "./model";

/**
 * The level at the hardest point as new, by the required method. Where the bid gives no level of its own for it but says
 * that its level holds at every point, the hardest is at most that.
 * @param asNew the level as new, by the same method
 */
export function worstPoint(bid: Bid, method: MethodId, asNew: ClaimedFigure<"g-max">): EvidencedFigure {
  const condition = ofAge({ kind: "new" });
  const own = claimedFigure(bid.id, bid.claims, { property: "g-max-highest-point", method, condition }, null);
  const level = intervalOfFigure(asNew.figure);
  if (own.figure.kind !== "unknown" || level === null || asNew.claim === null) return own;
  const basis = bestClaim(bid.claims, { property: "g-max-basis" });
  const holdsEverywhere =
    basis.ok && basis.value.claim.value.kind === "choice" && basis.value.claim.value.choice === "every-point";
  if (!basis.ok || !holdsEverywhere || !Number.isFinite(level.high)) return own;
  const figure = figureFromInterval(
    "impactLevel",
    { low: Number.NEGATIVE_INFINITY as In<"g">, high: level.high },
    {
      formula: "hardest point ≤ stated level, as that holds at every point",
      inputs: [claimInput(bid.id, asNew.claim), claimInput(bid.id, basis.value.claim)],
      assumptions: ["How far the hardest point lies below it is not known."],
      source: "derived from what the bid says of its level",
    },
  );
  return { figure, evidence: asNew.evidence };
}
