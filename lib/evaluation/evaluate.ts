import { type MethodId, matchMethod, type PropertyId, readClaims } from "#lib/claim";
import { type LifeCycleCost, lifeCycleCost } from "#lib/cost";
import { type BidFigures, type Criterion, ranking, type ShownFigure, scoreBid, weightStability } from "#lib/criteria";
import { type CheckedBid, findings } from "#lib/crosscheck";
import { fieldArea } from "#lib/field";
import type { Figure } from "#lib/figure";
import { intervalOfFigure } from "#lib/figure";
import { type ImpactRequirement, impactCaution } from "#lib/impact";
import type { InfillSystem } from "#lib/infill";
import { claimedFigure, type EvidencedFigure } from "./claimed-figure";
import { type BidFacts, derivedReaders } from "./derived-measures";
import { hardnessFigures } from "./hardness-figures";
import { infillFigures, knownInfill } from "./infill-figures";
import { type InstalledCampaign, latestDepthGrid } from "./latest-depth-grid";
import { claimedMeasures, type DerivedMeasureId, evidenceLevels } from "./measures";
import type { Bid, BidEvaluation, Brief, Evaluation, Project, Requirements } from "./model";
import { wantedProperties } from "./wanted-properties";

/**
 * The whole job: from entered claims to figures, findings, gates, scores and an order, each figure with its working.
 * Pure and deterministic: the same project gives the same evaluation, to the last bit.
 */
export function evaluate({ brief, requirements, bids, campaigns = [] }: Project): Evaluation {
  const area = fieldArea(brief.field);
  const setting = { brief, requirements, area, campaigns };
  const read = bids.map((bid) => factsOf(bid, setting));
  const checked = read.map(({ checked }) => checked);
  const asked = { criteria: requirements.criteria, wanted: wantedProperties(requirements.criteria) };
  const evaluated = read.map((facts) => evaluateBid(facts, checked, asked));
  const scores = evaluated.map(({ score }) => score);
  return {
    format: "evenfield-evaluation",
    version: 1,
    project: { name: brief.name, owner: brief.owner, notice: brief.notice },
    area,
    bids: evaluated,
    ranking: ranking(scores),
    stability: weightStability(scores),
    cautions: [impactCaution],
  };
}

type Setting = Readonly<{
  brief: Brief;
  requirements: Requirements;
  area: Figure<"area">;
  campaigns: readonly InstalledCampaign[];
}>;

/** What one bid amounts to by itself, and the same as the cross-checks look at it. */
type ReadBid = BidFacts & Readonly<{ checked: CheckedBid }>;

function factsOf(bid: Bid, { brief, requirements, area, campaigns }: Setting): ReadBid {
  const known = knownInfill(bid, brief.ownMaterials);
  const infill = infillFigures(bid, known, area);
  const impact = withMethod(requirements.impact);
  const hardness = hardnessFigures(bid, known.unknownMaterials.length === 0 ? known.system : null, impact, {
    ...{ mineralShare: infill.mineralShare, depth: infill.depth },
    hoursPerYear: brief.use.hoursPerYear.value,
    depthGrid: latestDepthGrid(campaigns.filter(({ installed }) => installed === bid.id)),
  });
  const cost = costFigures(bid, brief, area);
  const { totalArealDensity, stabilisingMass, depth: infillDepth, mineralShare, floatProneShare } = infill;
  const { id, letter, system, claims, prices } = bid;
  const checked: CheckedBid = {
    ...{ id, letter, system, claims, prices, area, impact },
    ...{ infill: known.system, described: describedComponents(bid, known.system) },
    ...{ totalArealDensity, stabilisingMass, infillDepth, mineralShare, floatProneShare },
    hoursPerYear: brief.use.hoursPerYear.value,
    studyYears: brief.money.studyPeriod.years,
    asOf: brief.money.baseDate,
  };
  return { bid, area, infill, hardness, cost, checked };
}

/** What is asked of every bid. */
type Asked = Readonly<{ criteria: readonly Criterion[]; wanted: readonly PropertyId[] }>;

function evaluateBid(
  { checked, ...facts }: ReadBid,
  all: readonly CheckedBid[],
  { criteria, wanted }: Asked,
): BidEvaluation {
  const { bid, infill, hardness, cost } = facts;
  const { id, letter, bidder, system, claims, answers } = bid;
  return {
    ...{ id, letter, bidder, system, infill, hardness, cost, answers },
    reading: readClaims(claims, wanted, checked.asOf),
    findings: findings(checked, all),
    score: scoreBid(criteria, shownFigures(facts, criteria)),
  };
}

const describedComponents = (bid: Bid, { components }: InfillSystem): CheckedBid["described"] =>
  bid.infill.components.flatMap(({ id, particleSize, words }) =>
    components.filter((known) => known.id === id).map(({ material }) => ({ id, material, particleSize, words })),
  );

/** The schema lets only methods of the register through; here the compiler learns it. */
function withMethod(impact: ImpactRequirement): ImpactRequirement & Readonly<{ method: MethodId }> {
  const method = matchMethod(impact.method);
  if (method === null || method === "not-stated") throw new RangeError(`no test method ${impact.method}`);
  return { ...impact, method };
}

function costFigures(bid: Bid, brief: Brief, area: Figure<"area">): LifeCycleCost {
  const squareMetres = intervalOfFigure(area)?.low;
  if (squareMetres === undefined) throw new RangeError("a field without an area: its schema let it through");
  return lifeCycleCost(bid.prices, {
    bid: bid.id,
    area: squareMetres,
    hoursPerYear: brief.use.hoursPerYear.value,
    conventions: brief.money,
  });
}

const isDerived = (id: string): id is DerivedMeasureId => Object.hasOwn(derivedReaders, id);

/** What a bid shows for a measure. */
export function measuredFigure(facts: BidFacts, measure: string): EvidencedFigure {
  if (isDerived(measure)) return derivedReaders[measure](facts);
  const claimed = claimedMeasures.find(({ id }) => id === measure);
  if (claimed === undefined) throw new RangeError(`no measure ${measure}`);
  const { property, method } = claimed;
  const { bid, area } = facts;
  return claimedFigure(bid.id, bid.claims, method === null ? { property } : { property, method }, area);
}

function shownFigures(facts: BidFacts, criteria: readonly Criterion[]): BidFigures {
  const shown = criteria.flatMap(({ id, measure }): readonly (readonly [string, ShownFigure])[] => {
    const { figure, evidence } = measuredFigure(facts, measure.id);
    const level = evidenceLevels.find((candidate) => candidate.level === evidence);
    return level === undefined ? [] : [[id, { figure, evidence: level }]];
  });
  return { bid: facts.bid.id, shown: Object.fromEntries(shown) };
}
