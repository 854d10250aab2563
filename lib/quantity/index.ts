export { inUnit, measured, type UnitOf, type UnitSystem, unitFor } from "./convert";
export {
  type CurrencyCode,
  currencies,
  currencyCodes,
  isForeignPrice,
  type WrittenCurrency,
  withCurrencySign,
  writtenCurrency,
} from "./currency";
export {
  type DimensionDefinition,
  type DimensionName,
  type DisplayUnit,
  dimensions,
  type SiUnit,
  type UnitDefinition,
} from "./dimensions";
export { formatInterval, formatReading, formatValue, type Shown } from "./format";
export { intervalOf, likelyOf } from "./interval";
export { formatMoney, formatMoneyExact } from "./money";
export { parseExact, parseQuantity } from "./parse";
export { isPlainDate, type PlainDate, plainDate } from "./plain-date";
export { explainQuantity, type QuantityProblem } from "./problem";
export type { ExactQuantity, Quantity, Reading } from "./quantity";
export { failed, type Result, succeeded } from "./result";
export { type ExactLimits, exactField, orNotGiven, plainDateField, quantityField, type WrittenLimit } from "./schema";
export { difference, notNegative, product, quotient, type Span, sumOf, tagged } from "./span";
export type { In, Interval } from "./unit";
