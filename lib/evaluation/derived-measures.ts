import { atLeastAsStrong } from "#lib/claim";
import type { BidCost } from "#lib/cost";
import type { Figure } from "#lib/figure";
import type { EvidencedFigure } from "./claimed-figure";
import type { DerivedMeasureId } from "./measures";
import type { Bid, HardnessFigures, InfillFigures } from "./model";
import { shockLayerThickness } from "./shock-layer-thickness";
import { noEvidence } from "./weakest";

/** What a derived measure is read off. */
export type BidFacts = Readonly<{
  bid: Bid;
  area: Figure<"area">;
  infill: InfillFigures;
  hardness: HardnessFigures;
  cost: BidCost;
  /** What the committee made of the bid, by id of the criterion. */
  ratings: Readonly<Record<string, Figure<"fraction">>>;
}>;

type Reader = (facts: BidFacts) => EvidencedFigure;

/** A total is no better shown than the least shown of its parts. */
const shownByInfill =
  (figure: (infill: InfillFigures) => Figure): Reader =>
  ({ bid, infill }) => ({
    figure: figure(infill),
    evidence: bid.infill.components.reduce(
      (weakest, { evidence }) => (atLeastAsStrong(evidence, weakest) ? weakest : evidence),
      bid.infill.components[0]?.evidence ?? noEvidence,
    ),
  });

/** Prices bind the bidder once the bid is signed. */
const priced =
  (figure: (cost: BidCost) => Figure): Reader =>
  ({ cost }) => ({ figure: figure(cost), evidence: "guaranteed" });

/** Where each derived measure stands. The type names a measure that has no reader. */
export const derivedReaders: Readonly<Record<DerivedMeasureId, Reader>> = {
  "impact-level-as-new": ({ hardness }) => ({
    figure: hardness.asNew,
    evidence: hardness.asNewEvidence,
    spread: hardness.asNewSpread,
  }),
  "impact-level-worst-point": ({ hardness }) => hardness.worstPoint,
  "impact-level-at-horizon": ({ hardness }) => ({ figure: hardness.atHorizon, evidence: hardness.atHorizonEvidence }),
  "depth-margin": ({ hardness }) => ({ figure: hardness.depthMargin.figure, evidence: hardness.asNewEvidence }),
  "shock-layer": ({ bid }) => shockLayerThickness(bid),
  "infill-mass-per-area": shownByInfill(({ totalArealDensity }) => totalArealDensity),
  "stabilising-mass": shownByInfill(({ stabilisingMass }) => stabilisingMass),
  "mineral-share": shownByInfill(({ mineralShare }) => mineralShare),
  "submerged-mass": shownByInfill(({ submergedMass }) => submergedMass),
  "float-prone-share": shownByInfill(({ floatProneShare }) => floatProneShare),
  "infill-depth": shownByInfill(({ depth }) => depth),
  "free-pile": shownByInfill(({ freePile }) => freePile),
  "present-value": priced(({ presentValue }) => presentValue),
  "price-at-base-date": priced(({ priceAtBaseDate }) => priceAtBaseDate),
  "equivalent-annual-cost": priced(({ equivalentAnnualCost }) => equivalentAnnualCost),
  "annual-cost-per-area": priced(({ perAreaYear }) => perAreaYear),
  "cost-per-hour": priced(({ perHour }) => perHour),
};
