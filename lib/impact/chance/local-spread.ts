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

/** Share of locations below a bound, where the field has a value; `logarithm` is the value's own, taken once for all bounds. */
export type ShareBelow = (value: number, logarithm: number) => number;

/** What asks for a bound again and again: the share of locations below it. */
export function shareBelow(bound: number, spread: LocalSpread): ShareBelow {
  const jump = (value: number) => (value < bound ? 1 : 0);
  if (spread.kind === "none" || !(spread.deviation > 0)) return jump;
  const { deviation } = spread;
  if (spread.kind === "amount") return (value) => normalShare((bound - value) / deviation);
  switch (spread.law) {
    case "log-linear": {
      const top = Math.log(bound);
      return (value, logarithm) => (value > 0 ? normalShare((top - logarithm) / deviation) : jump(value));
    }
    case "linear":
      return (value) => (value > 0 ? normalShare((bound / value - 1) / deviation) : jump(value));
  }
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
 * `raisedBy` is added to the logarithm of the value.
 * @source L. F. Fenton, IRE Trans. Commun. Syst. 8 (1960); moments of the lognormal distribution
 */
export function spreadOfMean(
  spread: LocalSpread,
  locations: number,
): Readonly<{ spread: LocalSpread; raisedBy: number }> {
  if (spread.kind === "none") return { spread, raisedBy: 0 };
  if (spread.kind === "amount" || spread.law === "linear") {
    return { spread: { ...spread, deviation: spread.deviation / Math.sqrt(locations) }, raisedBy: 0 };
  }
  const variance = spread.deviation ** 2;
  const ofMean = Math.log1p(Math.expm1(variance) / locations);
  return {
    spread: { ...spread, deviation: Math.sqrt(ofMean) },
    raisedBy: (variance - ofMean) / 2,
  };
}
