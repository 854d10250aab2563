import { agedPoints, claimsFor, type MethodId, type Property, propertyOf, type QuantityPropertyId } from "#lib/claim";
import { type PropertyOutlook, propertyOutlook } from "#lib/impact";
import { type DimensionName, type Interval, intervalOf, type SiUnit } from "#lib/quantity";
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
  bids: readonly Readonly<{ bid: string; outlook: PropertyOutlook<DimensionName> }>[];
}>;

/**
 * The followed properties of which some bid states a figure. Where a bid's figures carry no line nothing is assumed of
 * the years to come: no owner's change is set for these.
 */
export const propertyYears = (project: Project): readonly PropertyYears[] =>
  followedProperties.flatMap((id) => {
    const claims = project.bids.flatMap((bid) => claimsFor(bid.claims, id));
    const method = referenceMethod(id, project.requirements, claims);
    return method === null || claims.every((claim) => claim.method === "not-stated")
      ? []
      : [
          {
            property: propertyOf(id),
            method,
            bids: project.bids.map((bid) => ({ bid: bid.id, outlook: outlookOf(bid, id, method, project) })),
          },
        ];
  });

/** No owner sets a change for these: without a line only what is stated may be shown, not the years of the outlook. */
const noChange = { low: 0, likely: 0, high: 0 };

function outlookOf(bid: Bid, id: QuantityPropertyId, method: MethodId, { brief, requirements }: Project) {
  const { label, ...property } = propertyOf(id);
  if (property.kind !== "quantity") throw new RangeError(`${id} takes no figure`);
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
    limits: { low: null, high: null },
    chance: requirements.impact.chanceLevel.value,
    resets: [],
    years: requirements.impact.horizonYears,
  });
}
