import { type Claim, claimsFor, type DimensionOf, type QuantityPropertyId } from "#lib/claim";
import { oncePer } from "#lib/once";
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
): readonly StatedFigure<P>[] => figuresAmong(claimsFor(claims, property)) as readonly StatedFigure<P>[];

/** The figures of claims about one property, in its dimension. Kept, because several rules ask for them. */
const figuresAmong = oncePer((about: readonly Claim[]): readonly Readonly<{ claim: Claim; interval: unknown }>[] =>
  about
    .flatMap((claim) =>
      claim.value.kind === "quantity" ? [{ claim, interval: intervalOf<string>(claim.value.quantity.reading) }] : [],
    )
    .toSorted((one, other) => (one.claim.id < other.claim.id ? -1 : 1)),
);
