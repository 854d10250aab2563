import { shareOfWords } from "#lib/cost";
import { measured } from "#lib/quantity";
import type { AuditLine } from "./audit-lines";
import type { Laid } from "./laid";
import { type LineColumn, lineColumn, ownCell } from "./line-columns";
import { names } from "./names";
import { fifteenDigits, priceUnitOf, quantityUnitOf, type WrittenAmount } from "./written-amount";

/** The columns that hold one amount of a line: its price, or what taking it out costs. */
export type AmountColumns = Readonly<Record<"priced" | "price" | "per" | "quantity" | "unit" | "factor", LineColumn>>;

export const priceColumns: AmountColumns = {
  ...{ priced: "priced", price: "price", per: "per", quantity: "quantity", unit: "unit", factor: "factor" },
};

export const removalColumns: AmountColumns = {
  ...{ priced: "removalPriced", price: "removalPrice", per: "removalPer" },
  ...{ quantity: "removalQuantity", unit: "removalUnit", factor: "removalFactor" },
};

const pricedWords = {
  "lump-sum": "lump sum",
  "per-area": "by area",
  "per-unit": "by quantity",
  share: "share of a sum",
} as const;

/** Writes an amount as typed cells and gives the formula that multiplies them; a share has none before its sum is known. */
export function amountCells(laid: Laid, row: number, columns: AmountColumns, amount: WrittenAmount): string | null {
  const at = (key: keyof AmountColumns) => lineColumn(columns[key]);
  const own = (key: keyof AmountColumns) => ownCell(columns[key], row);
  laid.text(row, at("priced"), pricedWords[amount.kind]);
  switch (amount.kind) {
    case "lump-sum":
      laid.number(row, at("price"), amount.price, "inputMoney");
      return own("price");
    case "per-area":
      laid.number(row, at("price"), amount.price, "inputMoney");
      laid.text(row, at("per"), amount.areaUnit);
      laid.formula(row, at("quantity"), areaIn(amount), "workedNumber");
      laid.text(row, at("unit"), amount.areaUnit);
      return `${own("price")}*${own("quantity")}`;
    case "per-unit":
      laid.number(row, at("price"), amount.price, "inputMoney");
      laid.text(row, at("per"), amount.per);
      laid.number(row, at("quantity"), amount.quantity, "inputNumber");
      laid.text(row, at("unit"), amount.unit);
      laid.number(row, at("factor"), amount.factor, "inputNumber");
      return `${own("price")}*${own("quantity")}*${own("factor")}`;
    case "share":
      laid.number(row, at("price"), amount.share, "inputShare");
      laid.text(row, at("per"), `of ${shareOfWords[amount.of]}`);
      return null;
  }
}

function areaIn({ areaUnit, squareMetres }: Extract<WrittenAmount, { kind: "per-area" }>): string {
  if (areaUnit === "ft²") return names.squareFeet;
  return areaUnit === "m²" ? names.squareMetres : `${names.squareMetres}/${squareMetres}`;
}

/**
 * Puts the median of other lines in place of a price: of their unit prices, brought to one unit, and of their quantities
 * where the owner gives none; or of their amounts.
 */
export function medianCells(
  laid: Laid,
  row: number,
  { line, median }: AuditLine,
  rowOf: (ref: string) => number,
): void {
  if (median === null) return;
  if (line.amount.kind !== "per-unit") {
    const amounts = median.parts.map(({ ref }) => ownCell("plain", rowOf(ref)));
    laid.formula(row, lineColumn("price"), `MEDIAN(${amounts.join(",")})`, "workedMoney");
    return;
  }
  const mine = line.amount;
  const prices = median.parts.flatMap(({ ref, line: { amount } }) =>
    amount.kind === "per-unit" ? [converted(ownCell("price", rowOf(ref)), priceFactor(amount, mine))] : [],
  );
  laid.formula(row, lineColumn("price"), `MEDIAN(${prices.join(",")})`, "workedMoney");
  if (median.ownQuantity) return;
  const quantities = median.parts.flatMap(({ ref, line: { amount } }) =>
    amount.kind === "per-unit" ? [converted(ownCell("quantity", rowOf(ref)), quantityFactor(amount, mine))] : [],
  );
  laid.formula(row, lineColumn("quantity"), `MEDIAN(${quantities.join(",")})`, "workedNumber");
}

const converted = (cell: string, factor: number): string => (factor === 1 ? cell : `${cell}*${factor}`);

type PerUnit = Extract<AuditLine["line"]["amount"], { kind: "per-unit" }>;

/** How many of this line's unit prices one unit price of the other line is. */
function priceFactor(other: PerUnit, mine: PerUnit): number {
  const one = ({ unitPrice }: PerUnit) => measured(unitPrice.dimension, 1, priceUnitOf(unitPrice));
  return fifteenDigits(one(other) / one(mine));
}

function quantityFactor(other: PerUnit, mine: PerUnit): number {
  const one = ({ quantity }: PerUnit) => measured(quantity.dimension, 1, quantityUnitOf(quantity));
  return fifteenDigits(one(other) / one(mine));
}
