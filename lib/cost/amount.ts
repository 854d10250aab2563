import { type CurrencyCode, formatMoneyExact, formatValue, type In } from "#lib/quantity";
import type { Amount, ShareOf } from "./model";
import { shownCents, withoutDrift } from "./shown-cents";

/** What a share is taken of, in words. */
export const shareOfWords: Readonly<Record<ShareOf, string>> = {
  "base-bid": "the base bid",
  "accepted-bid": "the bid with what is accepted",
  "levelled-bid": "the levelled bid",
};

/**
 * What an amount comes to in cents at the base date. A lump sum is whole cents; a price per area or unit is not rounded.
 * @param area of the whole field, in m²
 * @throws RangeError for a share of a sum that is not known yet: `resolvedLines` comes first
 */
export function amountCents(amount: Amount, area: In<"m²">): number {
  switch (amount.kind) {
    case "lump-sum":
      return amount.price.value;
    case "per-area":
      return withoutDrift(amount.price.value * area);
    case "per-unit":
      // quantity and unit price are in matching SI units: the schema pairs their dimensions
      return withoutDrift(amount.quantity.value * amount.unitPrice.value);
    case "share":
      if (amount.sum === null) throw new RangeError(`${amount.share.asEntered} of a sum that is not known yet`);
      return withoutDrift(amount.share.value * amount.sum);
  }
}

/** An amount as it was entered, with what it is multiplied by: "$4.85/ft² × 80,000 ft²", "1.2 % × $908,700.00". */
export function amountText(amount: Amount, area: In<"m²">, currency: CurrencyCode = "USD"): string {
  switch (amount.kind) {
    case "lump-sum":
      return amount.price.asEntered;
    case "per-area":
      return `${amount.price.asEntered} × ${formatValue("area", area, "us")}`;
    case "per-unit":
      return `${amount.quantity.asEntered} × ${amount.unitPrice.asEntered}`;
    case "share": {
      const of = shareOfWords[amount.of];
      return amount.sum === null
        ? `${amount.share.asEntered} of ${of}`
        : `${amount.share.asEntered} × ${formatMoneyExact(shownCents(amount.sum), currency)}, ${of}`;
    }
  }
}
