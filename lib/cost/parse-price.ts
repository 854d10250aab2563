import {
  type ExactQuantity,
  explainQuantity,
  failed,
  measured,
  parseExact,
  type Result,
  succeeded,
} from "#lib/quantity";
import { type CountedIn, type UnitPriceDimension, unitPriceDimensions } from "./model";

/** More than the price of any field, in cents and in cents per m²: catches slips, no computation needs it. */
const largest = { price: 100_000_000_000, perArea: 100_000_000 };

/** "$18,500" → whole cents, or the sentence that helps. */
export function parseLumpSum(asEntered: string): Result<ExactQuantity<"money">, string> {
  const parsed = parseExact("money", asEntered);
  if (!parsed.ok) return failed(explainQuantity(parsed.problem));
  // a hundred times the dollars need not be whole in binary: 4.35 × 100 is 434.99999999999994
  const cents = Math.round(parsed.value.value);
  if (Math.abs(cents) > largest.price) {
    return failed(`“${asEntered}” is more than $1,000,000,000; expected the price of one field.`);
  }
  return Math.abs(parsed.value.value - cents) < 1e-3
    ? succeeded({ ...parsed.value, value: measured("money", cents) })
    : failed(`“${asEntered}” has a fraction of a cent; expected dollars and whole cents.`);
}

/** "$4.85/ft²" → cents per m², or the sentence that helps. */
export function parsePricePerArea(asEntered: string): Result<ExactQuantity<"moneyPerArea">, string> {
  const parsed = parseExact("moneyPerArea", asEntered);
  if (!parsed.ok) return failed(explainQuantity(parsed.problem));
  return Math.abs(parsed.value.value) <= largest.perArea
    ? succeeded(parsed.value)
    : failed(`“${asEntered}” is more than $90,000 a square foot; expected the price of a field’s area.`);
}

/** A quantity and the price of its unit, in matching SI units: cents are their product. */
export type PricedQuantity = Readonly<{
  quantity: ExactQuantity<CountedIn>;
  unitPrice: ExactQuantity<UnitPriceDimension>;
}>;

/** Which of the two texts needs attention, and the sentence that helps. */
export type PricedQuantityProblem = Readonly<{ field: "quantity" | "unitPrice"; message: string }>;

/** "4,000 lb" and "$0.38/lb" → the pair, or which of the two texts needs attention. */
export function parsePricedQuantity(
  quantityText: string,
  unitPriceText: string,
): Result<PricedQuantity, PricedQuantityProblem> {
  const quantity = parseCounted(quantityText);
  if (quantity === null) {
    return failed({
      field: "quantity",
      message: `“${quantityText}” was read as a quantity; expected a mass, a volume, a time, an area or a plain count, for example “4,000 lb”, “250 kgal” or “110 h”.`,
    });
  }
  const unitPrice = parseExact(unitPriceDimensions[quantity.dimension], unitPriceText);
  if (!unitPrice.ok) return failed({ field: "unitPrice", message: explainQuantity(unitPrice.problem) });
  const cents = quantity.value * unitPrice.value.value;
  return Math.abs(cents) <= largest.price
    ? succeeded({ quantity, unitPrice: unitPrice.value })
    : failed({
        field: "quantity",
        message: `“${quantityText}” at “${unitPriceText}” comes to more than $1,000,000,000; expected the price of one field.`,
      });
}

function parseCounted(asEntered: string): ExactQuantity<CountedIn> | null {
  for (const dimension of Object.keys(unitPriceDimensions) as CountedIn[]) {
    const parsed = parseExact(dimension, asEntered);
    if (parsed.ok) return parsed.value;
  }
  return null;
}
