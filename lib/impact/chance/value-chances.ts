import { type FieldValue, visitValues } from "./field-value";
import { type LocalSpread, type ShareBelow, shareBelow, spreadOfMean, valueWithin } from "./local-spread";

/** The two sides of what is asked for; null where nobody set one. A value meets `high` only below it. */
export type Sides = Readonly<{ low: number | null; high: number | null }>;

/** What chances are asked of: `required` of each location, `wished` of the surface at best. */
export type ChanceLimits = Readonly<{ required: Sides; wished: Sides }>;

/** Chances of one year, each from 0 to 1, the drift and the spread over the field being uncertain together. */
export type ValueChances = Readonly<{
  /** That the value of the field as such meets what is required, its locations left aside. */
  fieldMeets: number;
  /** That one location lies in the wished window. */
  locationInWindow: number;
  locationBelowWindow: number;
  locationAboveWindow: number;
  /** That one location meets what is required. */
  locationMeets: number;
  /** That all test locations meet what is required. */
  allMeet: number;
  /** That the mean of the test locations does. */
  meanMeets: number;
}>;

/** Deviations around a bound at which the chance of one location bends, and that of all of them. */
const bendsOfOne = [-3, 3];
const bendsOfAll = [-3, 0, 2, 5];

/** Weights that no chance people read can show. */
const negligible = 1e-12;

/**
 * Chances that hold for a field whose value is uncertain, and whose locations spread independently about it.
 * @param locations tested on the field, a whole number from 1
 * @source derived: Φ(z)ⁿ for n independent locations, averaged over the value of the field by quadrature
 */
export function valueChances(
  value: FieldValue,
  { required, wished }: ChanceLimits,
  spread: LocalSpread,
  locations: number,
): ValueChances {
  const mean = spreadOfMean(spread, locations);
  const cuts = [...cutsAround(required, bendsOfAll, spread), ...cutsAround(wished, bendsOfOne, spread)];
  const belowWindow = belowFoot(wished.low, spread);
  const belowWindowTop = belowTop(wished.high, spread);
  const [meetsFoot, meetsTop] = [belowFoot(required.low, spread), belowTop(required.high, spread)];
  const [meanFoot, meanTop] = [belowFoot(required.low, mean.spread), belowTop(required.high, mean.spread)];
  const total = { field: 0, below: 0, above: 0, meets: 0, all: 0, mean: 0 };
  visitValues(value, cuts, (at, weight) => {
    if (weight < negligible) return;
    const logarithm = Math.log(at);
    const meets = meetsTop(at, logarithm) - meetsFoot(at, logarithm);
    if (isWithin(required, at)) total.field += weight;
    total.below += weight * belowWindow(at, logarithm);
    total.above += weight * (1 - belowWindowTop(at, logarithm));
    total.meets += weight * meets;
    total.all += weight * meets ** locations;
    total.mean += weight * (meanTop(at, logarithm + mean.raisedBy) - meanFoot(at, logarithm + mean.raisedBy));
  });
  return {
    fieldMeets: asChance(total.field),
    locationInWindow: asChance(1 - total.below - total.above),
    locationBelowWindow: asChance(total.below),
    locationAboveWindow: asChance(total.above),
    locationMeets: asChance(total.meets),
    allMeet: asChance(total.all),
    meanMeets: asChance(total.mean),
  };
}

const isWithin = ({ low, high }: Sides, value: number): boolean =>
  (low === null || value >= low) && (high === null || value < high);

/** All lies below a top that nobody set, and nothing below such a foot. */
const belowTop = (top: number | null, spread: LocalSpread): ShareBelow =>
  top === null ? () => 1 : shareBelow(top, spread);
const belowFoot = (foot: number | null, spread: LocalSpread): ShareBelow =>
  foot === null ? () => 0 : shareBelow(foot, spread);

/** Downwards from an upper bound, upwards from a lower one. */
function cutsAround({ low, high }: Sides, bends: readonly number[], spread: LocalSpread): readonly number[] {
  const around = (bound: number, side: 1 | -1) =>
    (spread.kind === "none" ? [0] : bends).flatMap((bend) => valueWithin(bound, side * bend, spread) ?? []);
  return [...(high === null ? [] : around(high, 1)), ...(low === null ? [] : around(low, -1))];
}

/** Sums of weights miss 0 and 1 by the last bits. */
const asChance = (sum: number): number => Math.min(1, Math.max(0, sum));
