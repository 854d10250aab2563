import { numberIn, type UnitSystem, unitDefinition } from "./convert";
import { type DimensionName, type DisplayUnit, dimensions, type SiUnit } from "./dimensions";
import { intervalOf } from "./interval";
import type { Reading } from "./quantity";
import type { In, Interval } from "./unit";

/** In which unit a figure is shown: the usual one of a system, or one that the trade prefers for the thing at hand. */
export type Shown = UnitSystem | DisplayUnit;

const displayOf = (dimension: DimensionName, shown: Shown): DisplayUnit =>
  typeof shown === "string" ? dimensions[dimension][shown] : shown;

/** Decimals shown beyond those of the display unit, at most, so that a small value keeps two significant digits. */
const extraDecimals = 8;

/** A value in the reader's unit: "8.90 lb/ft²". @throws RangeError if it is not a finite number */
export function formatValue<D extends DimensionName>(dimension: D, si: In<SiUnit<D>>, system: Shown): string {
  const shown = shownNumber(dimension, si, system);
  return withUnit(dimension, system, [numberText(shown, decimalsFor(dimension, system, [shown]))], isOne(shown));
}

/**
 * An interval in the reader's unit: "8.50–9.00 lb/ft²", "at least 9.00 lb/ft²", one value where both ends agree.
 * @throws RangeError if an end is not a number or the low end is above the high end
 */
export function formatInterval<D extends DimensionName>(
  dimension: D,
  { low, high }: Interval<SiUnit<D>>,
  system: Shown,
): string {
  if (!(low <= high)) throw new RangeError(`no interval from ${low} to ${high}`);
  const lowKnown = Number.isFinite(low);
  const highKnown = Number.isFinite(high);
  if (lowKnown && highKnown)
    return low === high ? formatValue(dimension, low, system) : formatRange(dimension, { low, high }, system);
  if (lowKnown) return `at least ${formatValue(dimension, low, system)}`;
  return highKnown ? `at most ${formatValue(dimension, high, system)}` : "not bounded";
}

/** What was written, in the reader's unit; a tolerance stays a tolerance: "9.00 ± 0.45 lb/ft²". */
export function formatReading<D extends DimensionName>(
  dimension: D,
  reading: Reading<SiUnit<D>>,
  system: Shown,
): string {
  if (reading.kind !== "plus-or-minus") return formatInterval(dimension, intervalOf(reading), system);
  const unit = displayOf(dimension, system).unit;
  const value = shownNumber(dimension, reading.value, system);
  const tolerance = reading.tolerance / unitDefinition(dimension, unit).factor;
  const decimals = decimalsFor(dimension, system, [value, tolerance]);
  return withUnit(dimension, system, [numberText(value, decimals), " ± ", numberText(tolerance, decimals)], false);
}

function formatRange<D extends DimensionName>(dimension: D, { low, high }: Interval<SiUnit<D>>, system: Shown): string {
  const ends = [shownNumber(dimension, low, system), shownNumber(dimension, high, system)] as const;
  const fewest = decimalsFor(dimension, system, ends);
  const most = displayOf(dimension, system).decimals + extraDecimals;
  for (let decimals = fewest; decimals <= most; decimals += 1) {
    const [lowText, highText] = [numberText(ends[0], decimals), numberText(ends[1], decimals)];
    if (lowText === highText) continue;
    return withUnit(dimension, system, [lowText, ends[0] < 0 ? " to " : "–", highText], false);
  }
  return formatValue(dimension, low, system);
}

function shownNumber(dimension: DimensionName, si: number, system: Shown): number {
  if (!Number.isFinite(si)) throw new RangeError(`no ${dimensions[dimension].label} in ${si}`);
  return numberIn(dimension, si, displayOf(dimension, system).unit);
}

/** Decimals that fit all the numbers: those of the display unit, more where one would keep fewer than two digits. */
function decimalsFor(dimension: DimensionName, system: Shown, numbers: readonly number[]): number {
  const { decimals } = displayOf(dimension, system);
  const needed = numbers.map((number) => {
    const size = Math.abs(number);
    if (size < 10 ** -(decimals + extraDecimals)) return decimals;
    const twoDigits = 1 - Math.floor(Math.log10(size));
    if (twoDigits <= decimals) return decimals;
    const rounded = Number(number.toFixed(decimals));
    if (Math.abs(number - rounded) <= size * 1e-9) return decimals;
    return dimension === "money" ? 2 : Math.min(twoDigits, decimals + extraDecimals);
  });
  return Math.max(...needed);
}

const isOne = (number: number) => number === 1;

/** Digits with thousands separators and a true minus sign; a value that rounds to nothing has no sign. */
function numberText(number: number, decimals: number): string {
  return numberFormat(decimals).format(steadied(number)).replace("-", "−");
}

/** Kept because making one takes far longer than using it, and a page shows some thousand figures. */
const numberFormats = new Map<number, Intl.NumberFormat>();

function numberFormat(decimals: number): Intl.NumberFormat {
  const kept = numberFormats.get(decimals);
  if (kept !== undefined) return kept;
  const made = new Intl.NumberFormat("en-US", {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
    signDisplay: "negative",
  });
  numberFormats.set(decimals, made);
  return made;
}

/** The number without the last bits that converting back and forth leaves, so that 0.125 in stays a half to round up. */
const steadied = (number: number) => (Number.isSafeInteger(number) ? number : Number(number.toPrecision(13)));

const words = new Set(["year", "month", "day", "acre", "short ton"]);

function withUnit(dimension: DimensionName, system: Shown, parts: readonly string[], single: boolean): string {
  const { unit } = displayOf(dimension, system);
  if (unit.startsWith("$")) return `${parts.map(withCurrency).join("")}${unit.slice(1)}`;
  const text = parts.join("");
  if (unit === "") return text;
  if (unit.startsWith("/")) return `${text} per ${unit.slice(1)}`;
  if (unit.startsWith("1/")) return `${text} per ${unit.slice(2)}`;
  return `${text} ${unit}${words.has(unit) && !single ? "s" : ""}`;
}

/** "−4.85" → "−$4.85"; what stands between two numbers stays. */
const withCurrency = (part: string) => part.replace(/^(−?)(?=\d)/, "$1$$");
