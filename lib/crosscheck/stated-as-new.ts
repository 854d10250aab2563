import { bestClaim, type Claim, isAtFullDepth, type QuantityPropertyId, quantityOf } from "#lib/claim";
import { intervalOf } from "#lib/quantity";
import type { CheckedBid } from "./model";
import type { Span } from "./span";

/** A claim of the new field and the SI values that it allows. */
export type Stated = Readonly<{ claim: Claim; span: Span }>;

/**
 * What a bid states of a property of the new field; null where it states nothing, only words, or only an aged state.
 * An age that is not stated counts as new, as everywhere in a bid.
 */
export function statedAsNew({ claims }: Pick<CheckedBid, "claims">, property: QuantityPropertyId): Stated | null {
  const found = bestClaim(claims, { property });
  if (!found.ok) return null;
  const { claim } = found.value;
  const quantity = quantityOf(claim, property);
  const isNew = claim.condition.age.kind === "new" || claim.condition.age.kind === "not-stated";
  return quantity === null || !isNew || !isAtFullDepth(claim.condition.infill)
    ? null
    : { claim, span: intervalOf<string>(quantity.reading) };
}
