/** Far above the rounding of a unit conversion (about 1e-16), far below any tolerance of the trade. */
const conversionRounding = 1e-12;

/**
 * `from` minus `to`, and exactly 0 where the two differ only by the rounding of a unit conversion: 3 in and 0.25 ft
 * are one length, but not one binary number, and no bid may fail a gate over that.
 */
export function gapBetween(from: number, to: number): number {
  const gap = from - to;
  const same = Number.isFinite(gap) && Math.abs(gap) <= conversionRounding * Math.max(Math.abs(from), Math.abs(to));
  return same ? 0 : gap;
}

/** Whether `figure` is at or below `limit`, a difference by conversion rounding aside. */
export const isUpTo = (figure: number, limit: number): boolean => figure <= limit || gapBetween(figure, limit) === 0;
