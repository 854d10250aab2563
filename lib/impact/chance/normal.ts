import jStat from "jstat";

/** Beyond this many deviations the rest is below 1e-15, which no chance that people read can show. */
const farOut = 8;
const perDeviation = 64;

const places = Array.from({ length: 2 * farOut * perDeviation + 1 }, (_, index) => index / perDeviation - farOut);
const shares = Float64Array.from(places, (at) => jStat.erfc(-at / Math.SQRT2) / 2);
const slopes = Float64Array.from(places, (at) => Math.exp(-at * at * 0.5) / Math.sqrt(2 * Math.PI) / perDeviation);

/**
 * Chance that a standard normal value stays below `deviations`, to nine decimals: a year's chances ask for it some
 * hundred times, so it is read from a table with its slopes (cubic Hermite).
 * @source the table by the error function of jstat
 */
export function normalShare(deviations: number): number {
  if (deviations >= farOut) return 1;
  if (!(deviations > -farOut)) return 0;
  const along = (deviations + farOut) * perDeviation;
  const at = Math.floor(along);
  const t = along - at;
  const [from = 0, to = 0, rise = 0, endRise = 0] = [shares[at], shares[at + 1], slopes[at], slopes[at + 1]];
  const step = to - from;
  return from + t * (rise + t * (3 * step - 2 * rise - endRise + t * (rise + endRise - 2 * step)));
}

/** The value that a standard normal one stays below with the given chance. */
export const normalQuantile = (chance: number): number => jStat.normal.inv(chance, 0, 1);
