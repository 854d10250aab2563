import { type DimensionName, type ExactQuantity, parseExact } from "#lib/quantity";

/** A difference of temperatures has no freezing point. */
const differenceOf = (dimension: DimensionName): DimensionName =>
  dimension === "temperature" ? "temperatureDifference" : dimension;

/** “± 1/8 in” or “1/8 in” → the figure, in the dimension of what it belongs to. */
export const parseTolerance = (dimension: DimensionName, text: string) =>
  parseExact(differenceOf(dimension), text.replace(/^\s*(?:±|\+\s*\/\s*[-–−]|plus or minus)\s*/i, ""));

/** A tolerance that was checked before; null where none is written. @throws RangeError if it does not read */
export function toleranceOf(dimension: DimensionName, text: string): ExactQuantity | null {
  if (text === "") return null;
  const read = parseTolerance(dimension, text);
  if (!read.ok) throw new RangeError(`no tolerance in “${text}”`);
  return read.value;
}
