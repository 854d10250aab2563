import { normalShare } from "./normal";

/**
 * How single locations differ from the value of the field.
 * - `share`: by a share of it, `deviation` being the standard deviation of the logarithm (log-linear) or of the share
 *   itself (linear); this is what depth loss with a normal spread makes of the level.
 * - `amount`: by a standard deviation in the unit of the property.
 */
export type LocalSpread = Readonly<
  | { kind: "none" }
  | { kind: "share"; law: "log-linear" | "linear"; deviation: number }
  | { kind: "amount"; deviation: number }
>;

/** Standard deviations by which a bound lies above the middle of the locations; ±∞ where they do not spread. */
export function deviationsTo(bound: number, value: number, spread: LocalSpread): number {
  if (spread.kind === "none" || !(spread.deviation > 0)) return jump(bound, value);
  if (spread.kind === "amount") return (bound - value) / spread.deviation;
  if (!(value > 0)) return jump(bound, value); // a share of nothing is nothing
  const apart = spread.law === "log-linear" ? Math.log(bound / value) : bound / value - 1;
  return apart / spread.deviation;
}

/** The value of the field from which a bound lies so many deviations away; null where there is none. */
export function valueWithin(bound: number, deviations: number, spread: LocalSpread): number | null {
  if (spread.kind === "none") return bound;
  const reach = deviations * spread.deviation;
  if (spread.kind === "amount") return bound - reach;
  if (spread.law === "log-linear") return bound * Math.exp(-reach);
  return 1 + reach > 0 ? bound / (1 + reach) : null;
}

/**
 * How the mean of several locations differs from the value of the field. Exact where locations are normal; a mean of
 * lognormal ones is taken as lognormal with the same mean and variance.
 * @source L. F. Fenton, IRE Trans. Commun. Syst. 8 (1960); moments of the lognormal distribution
 */
export function spreadOfMean(
  spread: LocalSpread,
  locations: number,
): Readonly<{ spread: LocalSpread; raisedBy: number }> {
  if (spread.kind === "none") return { spread, raisedBy: 1 };
  if (spread.kind === "amount" || spread.law === "linear") {
    return { spread: { ...spread, deviation: spread.deviation / Math.sqrt(locations) }, raisedBy: 1 };
  }
  const variance = spread.deviation ** 2;
  const ofMean = Math.log1p(Math.expm1(variance) / locations);
  return {
    spread: { ...spread, deviation: Math.sqrt(ofMean) },
    raisedBy: Math.exp((variance - ofMean) / 2),
  };
}

/** Share of locations below a bound where the field has a value. */
export const shareBelow = (bound: number, value: number, spread: LocalSpread): number =>
  normalShare(deviationsTo(bound, value, spread));

const jump = (bound: number, value: number): number =>
  value < bound ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
