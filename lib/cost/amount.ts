import { formatValue, type In } from "#lib/quantity";
import type { Amount } from "./model";
import { withoutDrift } from "./shown-cents";

/**
 * What an amount comes to in cents at the base date. A lump sum is whole cents; a price per area or unit is not rounded.
 * @param area of the whole field, in m²
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
  }
}

/** An amount as it was entered, with the area it is multiplied by: "$4.85/ft² × 80,000 ft²". */
export function amountText(amount: Amount, area: In<"m²">): string {
  switch (amount.kind) {
    case "lump-sum":
      return amount.price.asEntered;
    case "per-area":
      return `${amount.price.asEntered} × ${formatValue("area", area, "us")}`;
    case "per-unit":
      return `${amount.quantity.asEntered} × ${amount.unitPrice.asEntered}`;
  }
}
