import {
  agedPoints,
  claimsFor,
  comparability,
  type MethodId,
  type Property,
  propertyOf,
  type QuantityPropertyId,
} from "#lib/claim";
import type { Criterion } from "#lib/criteria";
import { type ChanceOutlook, chanceOutlook, type PropertyOutlook, propertyOutlook, wantedChance } from "#lib/impact";
import { type DimensionName, type Interval, intervalOf, measured, type SiUnit } from "#lib/quantity";
import { claimedMeasures } from "./measures";
import type { Bid, Project } from "./model";
import { referenceMethod } from "./reference-method";

/** Properties besides G-max that change with use and bear on how players fare. */
const followedProperties = [
  "head-injury-criterion",
  "shock-absorption",
  "vertical-deformation",
  "rotational-resistance",
] as const satisfies readonly QuantityPropertyId[];

/** A property over the years, bid by bid, all by methods that compare with one. */
export type PropertyYears = Readonly<{
  property: Property;
  method: MethodId;
  /** What the owner's gates require of it, in SI; null on a side that none limits. */
  limits: GateLimits;
  bids: readonly Readonly<{
    bid: string;
    outlook: PropertyOutlook<DimensionName>;
    /** That a field like the bid's keeps the limits, year by year; null without a line or without limits. */
    chances: ChanceOutlook | null;
  }>[];
}>;

type GateLimits = Readonly<{ low: number | null; high: number | null }>;

/**
 * The followed properties of which some bid states a figure. Where a bid's figures carry no line nothing is assumed of
 * the years to come: no owner's change is set for these.
 */
export const propertyYears = (project: Project): readonly PropertyYears[] =>
  followedProperties.flatMap((id) => {
    const claims = project.bids.flatMap((bid) => claimsFor(bid.claims, id));
    const method = referenceMethod(id, project.requirements, claims);
    if (method === null || claims.every((claim) => claim.method === "not-stated")) return [];
    const limits = gateLimits(id, method, project.requirements.criteria);
    const bids = project.bids.map((bid) => {
      const outlook = outlookOf(bid, id, method, project, limits);
      return { bid: bid.id, outlook, chances: chancesOf(outlook, limits, project) };
    });
    return [{ property: propertyOf(id), method, limits, bids }];
  });

function sidesOf(gate: Criterion["gate"]): GateLimits {
  switch (gate.kind) {
    case "none":
      return { low: null, high: null };
    case "at-least":
      return { low: gate.limit.value, high: null };
    case "at-most":
    case "below":
      return { low: null, high: gate.limit.value };
    case "within":
      return { low: gate.low.value, high: gate.high.value };
  }
}

const compares = (id: QuantityPropertyId, method: MethodId, other: MethodId): boolean =>
  comparability(id, method, other).kind === "comparable";

/** The strictest limits that gates set on a property by methods that compare. */
function gateLimits(id: QuantityPropertyId, method: MethodId, criteria: readonly Criterion[]): GateLimits {
  const measures = new Set(
    claimedMeasures
      .filter(({ property, method: by }) => property === id && (by === null || compares(id, method, by)))
      .map((measure) => measure.id),
  );
  const sides = criteria.filter(({ measure }) => measures.has(measure.id)).map(({ gate }) => sidesOf(gate));
  const [lows, highs] = [sides.flatMap(({ low }) => low ?? []), sides.flatMap(({ high }) => high ?? [])];
  return {
    low: lows.length === 0 ? null : Math.max(...lows),
    high: highs.length === 0 ? null : Math.min(...highs),
  };
}

/** Nobody has measured how these spread over a field, so chances are of the field as a whole and of no single spot. */
function chancesOf(
  outlook: PropertyOutlook<DimensionName>,
  limits: GateLimits,
  { requirements: { impact } }: Project,
): ChanceOutlook | null {
  if (outlook.kind === "unknown" || outlook.premise !== "fitted-to-aged-data") return null;
  if (limits.low === null && limits.high === null) return null;
  return chanceOutlook({
    basis: outlook.basis,
    resets: [],
    limits: { required: limits, wished: { low: null, high: null } },
    spread: { kind: "unknown", because: { kind: "missing-input", what: "how the property spreads over a field" } },
    locations: 1,
    level: wantedChance(impact).value,
    years: impact.horizonYears,
  });
}

/** No owner sets a change for these: without a line only what is stated may be shown, not the years of the outlook. */
const noChange = { low: 0, likely: 0, high: 0 };

function outlookOf(
  bid: Bid,
  id: QuantityPropertyId,
  method: MethodId,
  { brief, requirements }: Project,
  limits: GateLimits,
) {
  const { label, ...property } = propertyOf(id);
  if (property.kind !== "quantity") throw new RangeError(`${id} takes no figure`);
  const { dimension } = property;
  const inSi = (limit: number | null) => (limit === null ? null : measured<DimensionName>(dimension, limit));
  const stated = agedPoints(bid.claims, id, method, brief.use.hoursPerYear.value).map(({ years, reading, claim }) => ({
    years,
    field: claim.testField === "" ? null : claim.testField.toLowerCase(),
    fields: claim.fieldCount,
    value: intervalOf(reading) as Interval<SiUnit<DimensionName>>, // in the SI unit of the property
  }));
  return propertyOutlook<DimensionName>({
    dimension: property.dimension,
    what: `${label} by the method asked for`,
    stated,
    change: noChange,
    limits: { low: inSi(limits.low), high: inSi(limits.high) },
    chance: requirements.impact.chanceLevel.value,
    resets: [],
    years: requirements.impact.horizonYears,
  });
}
