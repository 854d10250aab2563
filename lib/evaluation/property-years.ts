import {
  agedPoints,
  claimsFor,
  comparability,
  type MethodId,
  type Property,
  propertyOf,
  type QuantityPropertyId,
} from "#lib/claim";
import { type PropertyOutlook, propertyOutlook } from "#lib/impact";
import { type DimensionName, type Interval, intervalOf, type SiUnit } from "#lib/quantity";
import { claimedMeasures } from "./measures";
import type { Bid, Project } from "./model";

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
  bids: readonly Readonly<{ bid: string; outlook: PropertyOutlook<DimensionName> }>[];
}>;

/**
 * The followed properties of which some bid states a figure. Where a bid's figures carry no line nothing is assumed of
 * the years to come: no owner's change is set for these.
 */
export const propertyYears = (project: Project): readonly PropertyYears[] =>
  followedProperties.flatMap((id) => {
    const method = methodFor(id, project);
    return method === null
      ? []
      : [
          {
            property: propertyOf(id),
            method,
            bids: project.bids.map((bid) => ({ bid: bid.id, outlook: outlookOf(bid, id, method, project) })),
          },
        ];
  });

/** The method of the owner's criterion, else the one by which the most claims compare; null where nobody claims any. */
function methodFor(id: QuantityPropertyId, { bids, requirements }: Project): MethodId | null {
  const named = bids.flatMap(({ claims }) =>
    claimsFor(claims, id).flatMap(({ method }) => (method === "not-stated" ? [] : [method])),
  );
  const [first] = named;
  if (first === undefined) return null;
  const asked = requirements.criteria.flatMap(({ measure }) => {
    const claimed = claimedMeasures.find((candidate) => candidate.id === measure.id);
    return claimed?.property === id && claimed.method !== null ? claimed.method : [];
  })[0];
  if (asked !== undefined) return asked;
  const followers = (method: MethodId) =>
    named.filter((other) => comparability(id, method, other).kind === "comparable").length;
  return named.reduce((best, method) => (followers(method) > followers(best) ? method : best), first);
}

/** No owner sets a change for these, and years beyond what is stated are not shown without a line. */
const noChange = { low: 0, likely: 0, high: 0 };

function outlookOf(bid: Bid, id: QuantityPropertyId, method: MethodId, { brief, requirements }: Project) {
  const { label, ...property } = propertyOf(id);
  if (property.kind !== "quantity") throw new RangeError(`${id} takes no figure`);
  const stated = agedPoints(bid.claims, id, method, brief.use.hoursPerYear.value).map(({ years, reading }) => ({
    years,
    value: intervalOf(reading) as Interval<SiUnit<DimensionName>>, // in the SI unit of the property
  }));
  return propertyOutlook<DimensionName>({
    dimension: property.dimension,
    what: `${label} by the method asked for`,
    stated,
    change: noChange,
    limits: { low: null, high: null },
    chance: requirements.impact.chanceLevel.value,
    resets: [],
    years: requirements.impact.horizonYears,
  });
}
