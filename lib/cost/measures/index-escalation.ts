/**
 * A published price of another year at the base date, by a price index.
 * @throws RangeError if an index is not above 0
 * @source derived: price × index at the base date ÷ index of the price's own date
 */
export function priceByIndex(price: number, indexThen: number, indexAtBaseDate: number): number {
  if (!(indexThen > 0) || !(indexAtBaseDate > 0)) {
    throw new RangeError(`indices above 0 are needed, got ${indexThen} and ${indexAtBaseDate}`);
  }
  return (price * indexAtBaseDate) / indexThen;
}
