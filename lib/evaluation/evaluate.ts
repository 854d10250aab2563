import { type MethodId, matchMethod, type PropertyId, readClaims } from "#lib/claim";
import { type Committee, ratedFigure, startingCommittee } from "#lib/committee";
import {
  type BidFigures,
  type Criterion,
  ranking,
  ratingMeasure,
  type ShownFigure,
  scoreBid,
  weightStability,
} from "#lib/criteria";
import { type CheckedBid, type Finding, findingsAmong } from "#lib/crosscheck";
import { fieldArea } from "#lib/field";
import { type Figure, unknown } from "#lib/figure";
import { type ImpactRequirement, impactCaution } from "#lib/impact";
import type { InfillSystem } from "#lib/infill";
import { workedOutOnReading } from "#lib/once";
import { startingProcedure } from "#lib/procedure";
import { claimedFigure, type EvidencedFigure } from "./claimed-figure";
import { criteriaOf, foreignAnchor } from "./criteria-of";
import { type BidFacts, derivedReaders } from "./derived-measures";
import { hardnessFigures } from "./hardness-figures";
import { infillFigures, knownInfill } from "./infill-figures";
import { type InstalledCampaign, latestDepthGrid } from "./latest-depth-grid";
import { claimedMeasures, type DerivedMeasureId, evidenceLevels } from "./measures";
import type { Bid, BidEvaluation, Brief, Evaluation, Project, Requirements } from "./model";
import { type ProjectMoney, pricesAsBid, projectMoney, squareMetresOf } from "./project-money";
import { wantedProperties } from "./wanted-properties";

/**
 * The whole job: from entered claims to figures, findings, gates, scores and an order, each figure with its working.
 * Pure and deterministic: the same project gives the same evaluation, to the last bit.
 */
export function evaluate(project: Project): Evaluation {
  const { brief, requirements, bids, campaigns = [], committee = startingCommittee } = project;
  const area = fieldArea(brief.field);
  const setting = { brief, requirements, area, campaigns, committee };
  const read = bids.map((bid) => factsOf(bid, setting));
  const money = projectMoney(read, project, area);
  const findingsOf = findingsAmong(read.map(({ checked }) => checked));
  const asked = { criteria: criteriaOf(project), wanted: wantedProperties(requirements.criteria) };
  const evaluated = read.flatMap((facts, index) => {
    const cost = money.costs[index];
    return cost === undefined ? [] : [evaluateBid({ ...facts, cost }, findingsOf, asked, money)];
  });
  const scores = evaluated.map(({ score }) => score);
  return {
    format: "evenfield-evaluation",
    version: 1,
    project: { name: brief.name, owner: brief.owner, notice: brief.notice },
    area,
    bids: evaluated,
    ranking: ranking(scores),
    stability: weightStability(scores),
    baseAlternative: money.baseAlternative,
    procedure: project.procedure ?? startingProcedure,
    cautions: [impactCaution],
  };
}

type Setting = Readonly<{
  brief: Brief;
  requirements: Requirements;
  area: Figure<"area">;
  campaigns: readonly InstalledCampaign[];
  committee: Committee;
}>;

/** What one bid amounts to by itself, and the same as the cross-checks look at it. */
type ReadBid = Omit<BidFacts, "cost"> & Readonly<{ checked: CheckedBid }>;

function factsOf(bid: Bid, { brief, requirements, area, campaigns, committee }: Setting): ReadBid {
  const known = knownInfill(bid, brief.ownMaterials);
  const infill = infillFigures(bid, known, area);
  const impact = withMethod(requirements.impact);
  const hardness = hardnessFigures(bid, known.unknownMaterials.length === 0 ? known.system : null, impact, {
    mineralShare: infill.mineralShare,
    depth: infill.depth,
    hoursPerYear: brief.use.hoursPerYear.value,
    depthGrid: latestDepthGrid(campaigns.filter(({ installed }) => installed === bid.id)),
  });
  const { totalArealDensity, stabilisingMass, depth: infillDepth, mineralShare, floatProneShare } = infill;
  const { id, letter, system, claims } = bid;
  const prices = pricesAsBid(bid, brief, squareMetresOf(area));
  const checked: CheckedBid = {
    id,
    letter,
    system,
    claims,
    prices,
    area,
    impact,
    infill: known.system,
    described: describedComponents(bid, known.system),
    totalArealDensity,
    stabilisingMass,
    infillDepth,
    mineralShare,
    floatProneShare,
    hoursPerYear: brief.use.hoursPerYear.value,
    studyYears: brief.money.studyPeriod.years,
    asOf: brief.money.baseDate,
  };
  return { bid, area, infill, hardness, ratings: ratingsBy(committee, requirements.criteria, id), checked };
}

/** What the committee made of a bid on the criteria that it rates. */
const ratingsBy = (committee: Committee, criteria: readonly Criterion[], bid: string): BidFacts["ratings"] =>
  Object.fromEntries(
    criteria
      .filter(({ valueFunction }) => valueFunction.kind === "rating")
      .map((criterion) => [criterion.id, ratedFigure(committee, criterion, bid)]),
  );

/** What is asked of every bid. */
type Asked = Readonly<{ criteria: readonly Criterion[]; wanted: readonly PropertyId[] }>;

function evaluateBid(
  { checked, ...facts }: ReadBid & Pick<BidFacts, "cost">,
  findingsOf: (bid: CheckedBid) => readonly Finding[],
  { criteria, wanted }: Asked,
  money: ProjectMoney,
): BidEvaluation {
  const { bid, infill, hardness, cost, ratings } = facts;
  const { id, letter, bidder, system, claims, answers } = bid;
  return workedOutOnReading(
    {
      id,
      letter,
      bidder,
      system,
      infill,
      hardness,
      cost,
      ratings,
      answers,
      findings: findingsOf(checked),
      score: scoreBid(criteria, shownFigures(facts, criteria)),
    },
    {
      reading: () => readClaims(claims, wanted, checked.asOf),
      priceFindings: () => money.findings().get(id) ?? [],
    },
  );
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

const isDerived = (id: string): id is DerivedMeasureId => Object.hasOwn(derivedReaders, id);

/** What is asked of a bid: a measure and, for what people rate, the criterion that they rated. */
type Judged = Readonly<{ id: string; measure: Readonly<{ id: string }> }>;

/** What a bid shows for what a criterion judges. A rating is shown by the people who gave it, so no proof is asked for. */
export function measuredFigure(facts: BidFacts, criterion: Judged): EvidencedFigure {
  const measure = criterion.measure.id;
  if (measure === ratingMeasure.id) {
    const figure = facts.ratings[criterion.id];
    if (figure === undefined) throw new RangeError(`no rating for ${criterion.id}`);
    return { figure, evidence: "guaranteed" };
  }
  if (isDerived(measure)) return derivedReaders[measure](facts);
  const claimed = claimedMeasures.find(({ id }) => id === measure);
  if (claimed === undefined) throw new RangeError(`no measure ${measure}`);
  const { property, method } = claimed;
  const { bid, area } = facts;
  return claimedFigure(bid.id, bid.claims, method === null ? { property } : { property, method }, area);
}

function shownFigures(facts: BidFacts, criteria: readonly Criterion[]): BidFigures {
  const shown = criteria.flatMap((criterion): readonly (readonly [string, ShownFigure])[] => {
    const { id, askedOf } = criterion;
    const foreign = foreignAnchor(criterion);
    const { figure: found, evidence, spread = null } = measuredFigure(facts, criterion);
    const figure = foreign === null ? found : unknown(found.dimension, { kind: "missing-input", what: foreign });
    const level = evidenceLevels.find((candidate) => candidate.level === evidence);
    const asked =
      askedOf.kind === "every-bid" ? {} : { asked: measuredFigure(facts, { id, measure: askedOf.measure }).figure };
    return level === undefined ? [] : [[id, { figure, evidence: level, spread, ...asked }]];
  });
  return { bid: facts.bid.id, shown: Object.fromEntries(shown) };
}
