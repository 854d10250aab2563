import { failed, parseQuantity, type Result, succeeded } from "#lib/quantity";
import type { Property } from "./properties/properties";

/** The standard deviation that a report states for a figure, as written and in the SI unit of the property. */
export type Spread = Readonly<{ asEntered: string; deviation: number }>;

const expected = "expected a number with its unit or a percentage of the figure, such as “6 g” or “5 %”";

/**
 * Reads the standard deviation beside a figure: "6 g", or "5 %" of the figure. Null for an empty text.
 * @returns the sentence that helps where it does not read, or where there is no single number that it could belong to
 */
export function parseSpread(property: Property, figure: string, spread: string): Result<Spread | null, string> {
  const text = spread.trim();
  if (text === "") return succeeded(null);
  if (property.kind !== "quantity")
    return failed(`The standard deviation reads “${text}”, but this property takes no figure. Leave it empty.`);
  const read = parseQuantity(property.dimension, figure);
  if (!read.ok || read.value.reading.kind !== "exact")
    return failed(
      `The standard deviation reads “${text}”, but a deviation belongs to one number, and the figure reads “${figure.trim()}”.`,
    );
  // a deviation is read as what stands behind “±” is: a difference, so that a unit's own zero does not enter
  const both = parseQuantity(property.dimension, `${figure.trim()} ± ${text}`);
  if (!both.ok || both.value.reading.kind !== "plus-or-minus")
    return failed(`The standard deviation reads “${text}”; ${expected}.`);
  return succeeded({ asEntered: text, deviation: both.value.reading.tolerance });
}
