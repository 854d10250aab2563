/** Systems as bits, thirty in each of two numbers, so that unions of whole columns cost two operations. */
export type SystemSet = Readonly<{ first: number; second: number }>;

const half = 30;
const mostSystems = 2 * half;

/** The set of the places where a list is true. @throws RangeError beyond 60 */
export function systemSet(members: readonly boolean[]): SystemSet {
  if (members.length > mostSystems) throw new RangeError(`at most ${mostSystems} systems, got ${members.length}`);
  let [first, second] = [0, 0];
  for (const [place, isMember] of members.entries()) {
    if (!isMember) continue;
    if (place < half) first |= 1 << place;
    else second |= 1 << (place - half);
  }
  return { first, second };
}

/** Bits set in a number. @source the usual parallel count of bits, from memory */
export function countBits(bits: number): number {
  let sums = bits - ((bits >>> 1) & 0x55555555);
  sums = (sums & 0x33333333) + ((sums >>> 2) & 0x33333333);
  return (((sums + (sums >>> 4)) & 0x0f0f0f0f) * 0x01010101) >>> 24;
}

export const sizeOf = ({ first, second }: SystemSet): number => countBits(first) + countBits(second);
