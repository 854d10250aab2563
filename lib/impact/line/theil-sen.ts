import { normalQuantile } from "../chance/normal";
import { criticalKendall } from "./kendall";
import { distinctPlaces, type LinePoint, placesNeeded } from "./least-squares";
import { sum } from "./sum";

/**
 * The line through the median of all slopes between two observations. It was preferred to a weighted (Huber) line
 * because nothing has to be tuned, up to 29 % of the observations may lie anywhere, and its interval rests on ranks
 * alone, so it holds for few observations and scatter of any shape.
 */
export type RobustLine = Readonly<{
  slope: number;
  /** Median of what is left after the slope is taken off. */
  intercept: number;
  /** Where the slope lies with the chance asked for; null where so few observations can't give one. */
  slopeRange: Readonly<{ low: number; high: number }> | null;
  /** Ranks counted out, or their normal approximation where observations are tied or many. */
  by: "exact-ranks" | "normal-approximation";
}>;

/** Beyond this the normal approximation is as good and counting takes long. */
const mostCounted = 40;

/**
 * @param chance that the interval holds the slope, both sides together
 * @throws RangeError with observations at fewer than three different x
 * @source H. Theil (1950); P. K. Sen, "Estimates of the regression coefficient based on Kendall's tau", J. Am. Stat.
 * Assoc. 63 (1968), with its eq. 2.6 for ties
 */
export function robustLine(points: readonly LinePoint[], chance: number): RobustLine {
  const places = distinctPlaces(points);
  if (places < placesNeeded) throw new RangeError(`a line needs ${placesNeeded} different places, got ${places}`);
  const slopes = slopesBetween(points);
  const slope = median(slopes);
  const intercept = median(points.map(({ x, y }) => y - slope * x).sort((one, other) => one - other));
  const tied = places < points.length || new Set(points.map(({ y }) => y)).size < points.length;
  const counted = !tied && points.length <= mostCounted;
  const slopeRange = counted ? exactRange(slopes, points.length, chance) : normalRange(slopes, points, chance);
  return { slope, intercept, slopeRange, by: counted ? "exact-ranks" : "normal-approximation" };
}

/** The slopes between all pairs that stand at different x, in rising order. */
function slopesBetween(points: readonly LinePoint[]): readonly number[] {
  return points
    .flatMap((one, index) =>
      points.slice(index + 1).flatMap((other) => (other.x === one.x ? [] : [(other.y - one.y) / (other.x - one.x)])),
    )
    .sort((one, other) => one - other);
}

/** Numbers have to be in rising order. */
function median(sorted: readonly number[]): number {
  const upper = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
  const lower = sorted[Math.ceil(sorted.length / 2) - 1] ?? Number.NaN;
  return (lower + upper) / 2;
}

function exactRange(slopes: readonly number[], count: number, chance: number): RobustLine["slopeRange"] {
  const critical = criticalKendall(count, (1 - chance) / 2);
  // slopes left out at either end: one more would be too likely where there is no trend
  return critical === null ? null : between(slopes, (slopes.length - critical) / 2 + 1);
}

function normalRange(
  slopes: readonly number[],
  points: readonly LinePoint[],
  chance: number,
): RobustLine["slopeRange"] {
  const ties = [points.map(({ x }) => x), points.map(({ y }) => y)].flatMap(repeats);
  const variance = (orders(points.length) - sum(ties.map(orders))) / 18;
  const reach = normalQuantile((1 + chance) / 2) * Math.sqrt(variance);
  return between(slopes, Math.max(1, Math.round((slopes.length - reach) / 2)));
}

const orders = (count: number): number => count * (count - 1) * (2 * count + 5);

function repeats(values: readonly number[]): readonly number[] {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts.values()];
}

/** From the slope of a rank, counted from 1, to the one of the same rank from above. */
function between(slopes: readonly number[], rank: number): RobustLine["slopeRange"] {
  const low = slopes[rank - 1];
  const high = slopes[slopes.length - rank];
  return low === undefined || high === undefined ? null : { low, high };
}
