import type { MoneyFinding } from "#lib/cost";

/** What a check of prices is about, as a heading. */
export const moneyFindingTitles: Readonly<Record<MoneyFinding["check"], string>> = {
  extension: "Quantity, unit price and extension",
  sum: "Sum of the bid and its lines",
  "sum-in-words": "Sum in figures and in words",
  currency: "Currency of a price",
  "total-spread": "Price beside those of the other bids",
  "item-spread": "Price of one item beside those of the other bids",
  "unbalanced-unit-price": "Unit price beside those of the other bids",
};

/** How much a check of prices asks of the reader, in words. */
export const moneySeverityWords: Readonly<Record<MoneyFinding["severity"], string>> = {
  differs: "Does not agree",
  note: "Worth a look",
};
