import { agedPoints, type MethodId, type QuantityPropertyId } from "#lib/claim";
import type { AgedResult } from "#lib/impact";
import { intervalOf } from "#lib/quantity";
import type { Bid } from "./model";

/**
 * What a bid states of a property over the years by methods that compare, as single results for a line; what is open on
 * one side carries no middle and is left out. A claim that names no field counts as one of its own.
 */
export const agedResults = (
  { claims }: Pick<Bid, "claims">,
  property: QuantityPropertyId,
  method: MethodId,
  hoursPerYear: number,
): readonly AgedResult[] =>
  agedPoints(claims, property, method, hoursPerYear).flatMap(({ years, reading, claim }) => {
    const { low, high } = intervalOf<string>(reading);
    return Number.isFinite(low) && Number.isFinite(high)
      ? [
          {
            age: { years },
            value: (low + high) / 2,
            field: claim.testField === "" ? null : claim.testField.toLowerCase(),
            fields: claim.fieldCount ?? 1,
          },
        ]
      : [];
  });
