import {
  type DimensionName,
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

/** Reads a price in any currency that a project can have. Whether it is the project's is asked where both are known. */
function parseMoney<D extends DimensionName>(dimension: D, text: string): Result<ExactQuantity<D>, string> {
  const parsed = parseExact(dimension, text);
  return parsed.ok ? parsed : failed(explainQuantity(parsed.problem));
}

/** "$18,500" → whole cents, or the sentence that helps. */
export function parseLumpSum(asEntered: string): Result<ExactQuantity<"money">, string> {
  const parsed = parseMoney("money", asEntered);
  if (!parsed.ok) return parsed;
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
  const parsed = parseMoney("moneyPerArea", asEntered);
  if (!parsed.ok) return parsed;
  return Math.abs(parsed.value.value) <= largest.perArea
    ? succeeded(parsed.value)
    : failed(`“${asEntered}” is more than $90,000 a square foot; expected the price of a field’s area.`);
}

/** "$0.38/lb" → cents per SI unit, or the sentence that helps. A unit price of a quantity that is not bid is never a credit. */
export function parseUnitPrice<D extends UnitPriceDimension>(
  dimension: D,
  asEntered: string,
): Result<ExactQuantity<D>, string> {
  const parsed = parseMoney(dimension, asEntered);
  if (!parsed.ok) return parsed;
  return parsed.value.value >= 0 ? parsed : failed(`“${asEntered}” is below zero; expected zero or more.`);
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
  if (quantityText.trim() === "")
    return failed({ field: "quantity", message: "Write the quantity with its unit, for example “4,000 lb”." });
  const quantity = parseCounted(quantityText);
  if (!quantity.ok) return failed({ field: "quantity", message: quantity.problem });
  const unitPrice = parseMoney(unitPriceDimensions[quantity.value.dimension], unitPriceText);
  if (!unitPrice.ok) return failed({ field: "unitPrice", message: unitPrice.problem });
  const cents = quantity.value.value * unitPrice.value.value;
  return Math.abs(cents) <= largest.price
    ? succeeded({ quantity: quantity.value, unitPrice: unitPrice.value })
    : failed({
        field: "quantity",
        message: `“${quantityText}” at “${unitPriceText}” comes to more than $1,000,000,000; expected the price of one field.`,
      });
}

/** "4,000 lb", "250 kgal", "110 h" or "120": a quantity in whatever it is counted in. */
export function parseCounted(asEntered: string): Result<ExactQuantity<CountedIn>, string> {
  for (const dimension of Object.keys(unitPriceDimensions) as CountedIn[]) {
    const parsed = parseExact(dimension, asEntered);
    if (parsed.ok) return parsed;
  }
  return failed(
    `“${asEntered}” was read as a quantity; expected a mass, a volume, a time, an area or a plain count, for example “4,000 lb”, “250 kgal” or “110 h”.`,
  );
}
