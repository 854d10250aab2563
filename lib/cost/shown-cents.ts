/**
 * The figure without the last digits that binary arithmetic adds: 38 800 000.00000001 becomes 38 800 000.
 * Thirteen digits hold a cent in a hundred thousand million dollars.
 */
export const withoutDrift = (value: number): number => Number(value.toPrecision(13));

/**
 * Whole cents as shown: half a cent goes up, in a credit too (−0.5 becomes −1). Totals are shown from the unrounded
 * sum, so that the shown parts of a sum may differ from the shown sum by a cent or two.
 */
export function shownCents(cents: number): number {
  const size = Math.floor(Math.abs(withoutDrift(cents)) + 0.5);
  return cents < 0 && size > 0 ? -size : size;
}
