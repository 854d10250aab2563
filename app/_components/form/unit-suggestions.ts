import { type CurrencyCode, currencies, type DimensionName, dimensions, writtenCurrency } from "#lib/quantity";

const leadingNumber = /^[^\d]{0,8}\d[\d.,/\s–-]{0,20}/;

/** A number with its unit as people write it: the currency stands in front, as typed or else that of the project. */
function written(number: string, symbol: string, currency: CurrencyCode): string {
  if (!symbol.startsWith("$")) return `${number} ${symbol}`;
  const isNamed = number.includes("$") || writtenCurrency(number).code !== null;
  return `${isNamed ? number : number.replace(/\d/, (digit) => `${currencies[currency].sign}${digit}`)}${symbol.slice(1)}`;
}

/** The number typed so far in each unit of the dimension, the reader's usual units first; nothing before a number stands. */
export function unitSuggestions(
  text: string,
  dimension: DimensionName,
  currency: CurrencyCode = "USD",
): readonly string[] {
  const number = leadingNumber.exec(text)?.[0]?.replace(/[.,/\s–-]+$/, "");
  if (number === undefined || number === "") return [];
  const { us, metric, units } = dimensions[dimension];
  const symbols = new Set([us.unit, metric.unit, ...Object.keys(units)]);
  return [...symbols]
    .filter((symbol) => symbol !== "" && symbol !== "1")
    .map((symbol) => written(number, symbol, currency));
}
