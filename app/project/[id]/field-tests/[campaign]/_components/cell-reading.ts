import { type DimensionName, formatValue, parseExact, type UnitSystem } from "#lib/quantity";
import type { ReadCell } from "./paste-block";

/** A pasted cell with how it was read, in the reader’s units. */
export function cellReading(dimension: DimensionName, text: string, units: UnitSystem): ReadCell {
  const parsed = text === "" ? null : parseExact(dimension, text);
  return { text, reading: parsed?.ok ? `read as ${formatValue(dimension, parsed.value.value, units)}` : "" };
}

/** A pasted cell that is taken as words. */
export const wordsCell = (text: string): ReadCell => ({ text, reading: "" });
