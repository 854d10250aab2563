/**
 * Index is the number of falling pairs, the value the share of all orders that have it.
 * @source the orders of n things by their number of inversions (Mahonian numbers); M. G. Kendall, Biometrika 30 (1938)
 */
function inversionShares(count: number): readonly number[] {
  let shares: readonly number[] = [1];
  for (let size = 2; size <= count; size += 1) {
    const wider = new Array<number>(shares.length + size - 1).fill(0);
    for (const [falling, share] of shares.entries()) {
      for (let added = 0; added < size; added += 1)
        wider[falling + added] = (wider[falling + added] ?? 0) + share / size;
    }
    shares = wider;
  }
  return shares;
}

/**
 * Kendall's S is the number of pairs in rising order less the number in falling order. The smallest S that is reached by chance at most with `tail` on that side; null where even all pairs in rising order
 * are likelier than that, as with four observations and 2.5 %.
 */
export function criticalKendall(count: number, tail: number): number | null {
  const pairs = (count * (count - 1)) / 2;
  const shares = inversionShares(count);
  let reached = 0;
  for (const [falling, share] of shares.entries()) {
    reached += share;
    if (reached > tail) return falling === 0 ? null : pairs - 2 * (falling - 1);
  }
  return null;
}
