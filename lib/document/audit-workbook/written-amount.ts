import type { Amount, ShareOf } from "#lib/cost";
import { type DimensionName, type ExactQuantity, inUnit, measured, type UnitOf, unitFor } from "#lib/quantity";

/** An amount as typed cells: prices in whole currency units, each in the unit that was written. */
export type WrittenAmount = Readonly<
  | { kind: "lump-sum"; price: number }
  /** The area is that of the whole field in `areaUnit`. */
  | { kind: "per-area"; price: number; areaUnit: string; squareMetres: number }
  /** `factor` is how many units of the price make one unit of the quantity, such as 0.0005 short tons in a pound. */
  | { kind: "per-unit"; price: number; per: string; quantity: number; unit: string; factor: number }
  | { kind: "share"; share: number; of: ShareOf }
>;

/** Spreadsheet programs hold fifteen digits; the rest is drift of binary arithmetic. */
export const fifteenDigits = (number: number): number => Number(number.toPrecision(15));

/** A figure that was worked out has no unit of its own; it is written in the usual one. Cents are written as money. */
export function priceUnitOf<D extends DimensionName>({ dimension, unit }: ExactQuantity<D>): UnitOf<D> {
  const named = unit === "" || unit.startsWith("cent") ? unitFor(dimension, "us") : unit;
  return named as UnitOf<D>;
}

/** "$/short ton" is a price for each "short ton". */
const denominator = (priceUnit: string): string => (priceUnit === "$" ? "" : priceUnit.slice(2));

function perUnit(amount: Extract<Amount, { kind: "per-unit" }>): WrittenAmount {
  const { quantity, unitPrice } = amount;
  const unit = quantityUnitOf(quantity);
  const priceUnit = priceUnitOf(unitPrice);
  const cents = measured(quantity.dimension, 1, unit) * measured(unitPrice.dimension, 1, priceUnit);
  return {
    kind: "per-unit",
    price: fifteenDigits(inUnit(unitPrice.dimension, unitPrice.value, priceUnit)),
    per: denominator(priceUnit) || "one",
    quantity: fifteenDigits(inUnit(quantity.dimension, quantity.value, unit)),
    unit: unit || "one",
    factor: fifteenDigits(cents / 100),
  };
}

/** Hours are what time is priced by, and what a link that worked out a time means. */
export const quantityUnitOf = <D extends DimensionName>(quantity: ExactQuantity<D>): UnitOf<D> =>
  quantity.dimension === "time" && quantity.unit === "" ? ("h" as UnitOf<D>) : priceUnitOf(quantity);

export function writtenAmount(amount: Amount): WrittenAmount {
  switch (amount.kind) {
    case "lump-sum":
      return { kind: "lump-sum", price: fifteenDigits(amount.price.value / 100) };
    case "per-area": {
      const unit = priceUnitOf(amount.price);
      const areaUnit = denominator(unit) as UnitOf<"area">;
      return {
        kind: "per-area",
        price: fifteenDigits(inUnit("moneyPerArea", amount.price.value, unit)),
        areaUnit,
        squareMetres: fifteenDigits(measured("area", 1, areaUnit)),
      };
    }
    case "per-unit":
      return perUnit(amount);
    case "share":
      return { kind: "share", share: fifteenDigits(amount.share.value), of: amount.of };
  }
}
