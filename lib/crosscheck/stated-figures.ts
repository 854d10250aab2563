import { type Claim, claimsFor, type DimensionOf, type QuantityPropertyId, quantityOf } from "#lib/claim";
import { type Interval, intervalOf, type SiUnit } from "#lib/quantity";

/** A claim that gives a figure, with every value its words allow. */
export type StatedFigure<P extends QuantityPropertyId> = Readonly<{
  claim: Claim;
  interval: Interval<SiUnit<DimensionOf<P>>>;
}>;

/** What the claims give for a property as figures, in the order of their ids; claims in words are left out. */
export const statedFigures = <P extends QuantityPropertyId>(
  claims: readonly Claim[],
  property: P,
): readonly StatedFigure<P>[] =>
  claimsFor(claims, property)
    .flatMap((claim) => {
      const quantity = quantityOf(claim, property);
      return quantity === null ? [] : [{ claim, interval: intervalOf(quantity.reading) }];
    })
    .toSorted((one, other) => (one.claim.id < other.claim.id ? -1 : 1));
