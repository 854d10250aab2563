import { type Interval, measured } from "#lib/quantity";

/**
 * Nominal openings in mm by sieve number. A larger number is a finer sieve.
 * @source ASTM E11, nominal openings, from memory
 */
const openings = new Map<number, number>([
  [4, 4.75],
  [5, 4],
  [6, 3.35],
  [7, 2.8],
  [8, 2.36],
  [10, 2],
  [12, 1.7],
  [14, 1.4],
  [16, 1.18],
  [18, 1],
  [20, 0.85],
  [25, 0.71],
  [30, 0.6],
  [35, 0.5],
  [40, 0.425],
  [45, 0.355],
  [50, 0.3],
  [60, 0.25],
  [70, 0.212],
  [80, 0.18],
  [100, 0.15],
  [120, 0.125],
  [140, 0.106],
  [170, 0.09],
  [200, 0.075],
]);

/** The sieve numbers that the table knows, coarse to fine. */
export const sieveNumbers: readonly number[] = [...openings.keys()];

/** Opening in m of a sieve; undefined for a number that the table does not hold. */
export function sieveOpening(sieve: number) {
  const opening = openings.get(sieve);
  return opening === undefined ? undefined : measured("length", opening, "mm");
}

/**
 * Grain sizes in m of a grade named by two sieve numbers, in either order: "20–40" is 0.425 mm to 0.85 mm.
 * Undefined where the table lacks one of the two.
 */
export function grainOfMesh(sieve: number, other: number): Interval<"m"> | undefined {
  const [coarse, fine] = [sieveOpening(Math.min(sieve, other)), sieveOpening(Math.max(sieve, other))];
  return coarse === undefined || fine === undefined ? undefined : { low: fine, high: coarse };
}
