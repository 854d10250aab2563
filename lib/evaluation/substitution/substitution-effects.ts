import { inSentence, propertyOf } from "#lib/claim";
import { placingTotal } from "#lib/criteria";
import { type Figure, formatFigure, listed } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import { type ReviewRow, reviewVersion, startingContract } from "#lib/submittal";
import { awardedBid } from "../awarded-bid";
import { evaluate, measuredFigure } from "../evaluate";
import type { DerivedMeasureId } from "../measures";
import type { Bid, BidEvaluation, Evaluation, Project, Substitution } from "../model";
import { formatPoints } from "../points";
import { reviewedRequirements } from "../reviewed-requirements";
import { substitutedBid } from "./substitution";

/** One figure as bid and as substituted, in words. */
export type SubstitutionEffect = Readonly<{ what: string; asBid: string; substituted: string; isSame: boolean }>;

/** What a substitution changes. */
export type SubstitutionEffects = Readonly<{
  bid: Bid;
  /** Every salient characteristic: the substitute against the clause and against what was bid. */
  rows: readonly ReviewRow[];
  effects: readonly SubstitutionEffect[];
  /** Characteristics that clauses limit and of which the request says nothing. */
  silent: readonly string[];
}>;

const placeOf = ({ ranking, bids }: Evaluation, bid: string): string => {
  const place = ranking.places.find((each) => each.bid === bid)?.place;
  return place === undefined ? "fails a gate" : `${place} of ${bids.length}`;
};

type Side = Readonly<{ evaluation: Evaluation; bid: Bid; own: BidEvaluation }>;

function sideOf(project: Project, bid: Bid): Side {
  const bids = project.bids.map((each) => (each.id === bid.id ? bid : each));
  const evaluation = evaluate({ ...project, bids });
  const own = evaluation.bids.find(({ id }) => id === bid.id);
  if (own === undefined) throw new RangeError(`no bid ${bid.id} in the evaluation`);
  return { evaluation, bid, own };
}

/** What is told of both sides: scores, mass, outlook and cost, each by the same evaluation. */
function told(
  project: Project,
  { evaluation, bid, own }: Side,
  units: UnitSystem,
): readonly (readonly [string, string])[] {
  const shown = (figure: Figure) => formatFigure(figure, units);
  const facts = { ...own, bid, area: evaluation.area };
  const { infill, hardness, cost } = own;
  const { criteria } = project.requirements;
  const others: readonly (readonly [DerivedMeasureId, string, Figure])[] = [
    ["infill-mass-per-area", "Infill mass per area", infill.totalArealDensity],
    ["stabilising-mass", "Total stabilising mass", infill.stabilisingMass],
    ["infill-depth", "Infill depth from mass and density", infill.depth],
    ["submerged-mass", "Infill mass per area under water", infill.submergedMass],
    ["impact-level-as-new", "Impact level as new", hardness.asNew],
    ["impact-level-at-horizon", "Impact level in the last year looked at", hardness.atHorizon],
    ["depth-margin", "Depth that may be lost before the limit", hardness.depthMargin.figure],
    ["present-value", "Life-cycle cost, present value", cost.presentValue],
    ["equivalent-annual-cost", "Equivalent annual cost", cost.equivalentAnnualCost],
  ];
  return [
    ["Place among the bids", placeOf(evaluation, bid.id)],
    ["Total of scores, of 100", formatPoints(placingTotal(own.score))],
    ...criteria.map((criterion) => [criterion.label, shown(measuredFigure(facts, criterion).figure)] as const),
    // what no criterion judges
    ...others
      .filter(([id]) => criteria.every(({ measure }) => measure.id !== id))
      .map(([, what, figure]) => [what, shown(figure)] as const),
  ];
}

/**
 * What a substitution changes of the bid that was taken: side by side on every salient characteristic, and the effect on
 * scores, mass, outlook and cost by the same evaluation of a copy of the project. Null while nobody’s bid was taken.
 */
export function substitutionEffects(
  project: Project,
  substitution: Substitution,
  units: UnitSystem,
): SubstitutionEffects | null {
  const bid = awardedBid(project)?.bid;
  if (bid === undefined) return null;
  const requirements = reviewedRequirements(project.requirements).filter(({ isOn }) => isOn);
  const { sameWithin } = project.contract ?? startingContract;
  const rows = reviewVersion(
    { values: substitution.claims, remarks: {} },
    { asked: requirements, requirements, bid: bid.claims, sameWithin: sameWithin.value },
  );
  const [before, after] = [sideOf(project, bid), sideOf(project, substitutedBid(bid, substitution))].map((side) =>
    told(project, side, units),
  );
  const substituted = new Map(after);
  const once = new Map(before);
  return {
    bid,
    rows: rows.filter(({ submitted }) => submitted !== null),
    effects: [...once].map(([what, asBid]) => {
      const now = substituted.get(what) ?? "";
      return { what, asBid, substituted: now, isSame: asBid === now };
    }),
    silent: rows.flatMap(({ submitted, requirement }) => {
      const property = requirement?.subject?.property;
      return submitted !== null || property === undefined || requirement?.limit === null
        ? []
        : [inSentence(propertyOf(property).label)];
    }),
  };
}

/** One sentence on what the request leaves open; empty where it speaks of everything that clauses limit. */
export const silentSentence = ({ silent }: SubstitutionEffects): string =>
  silent.length === 0
    ? ""
    : `The request says nothing of ${listed([...new Set(silent)])}, so what was bid counts on in the comparison below.`;
