import { crossingOf, normalBelow, normalQuantile } from "./standard-normal";

/** Points of the integral over the sample's standard deviation; doubling them changes no digit shown. */
const points = 800;
/** Standard deviations of the sample's standard deviation over which it is integrated. */
const reach = 12;

/**
 * One-sided tolerance factor: with the given confidence, at least the share of a normal population lies below the mean
 * of n values plus this many of their standard deviations.
 * @param share covered, 0.95 leaves 5 % above
 * @throws RangeError for fewer than 2 values, or a share or confidence outside 0.5 to 1
 * @source as in NIST/SEMATECH e-Handbook 7.2.6.3 and ISO 16269-6; here by integration over the sample's standard
 * deviation, which gives the same as the noncentral t distribution
 */
export function toleranceFactor(values: number, share: number, confidence: number): number {
  if (!(Number.isInteger(values) && values >= 2)) throw new RangeError(`at least 2 values needed, got ${values}`);
  for (const part of [share, confidence])
    if (!(part >= 0.5 && part < 1)) throw new RangeError(`a share from 0.5 to below 1 needed, got ${part}`);
  const quantile = normalQuantile(share);
  const weights = deviationWeights(values - 1);
  const confidenceOf = (factor: number) =>
    weights.reduce(
      (sum, [deviation, weight]) => sum + weight * normalBelow(Math.sqrt(values) * (factor * deviation - quantile)),
      0,
    );
  return crossingOf(confidenceOf, confidence, [0, 1e4]);
}

/** Sample standard deviations of a standard normal population with their weights, which sum to 1. */
function deviationWeights(degreesOfFreedom: number): readonly (readonly [deviation: number, weight: number])[] {
  const width = reach / Math.sqrt(2 * degreesOfFreedom);
  const [low, high] = [Math.max(0, 1 - width), 1 + width];
  const logDensity = (at: number) =>
    (degreesOfFreedom === 1 ? 0 : (degreesOfFreedom - 1) * Math.log(at)) - (degreesOfFreedom * (at * at - 1)) / 2;
  const raw = Array.from({ length: points + 1 }, (_, index) => {
    const at = low + ((high - low) * index) / points;
    const simpson = index === 0 || index === points ? 1 : index % 2 === 1 ? 4 : 2;
    return [at, simpson * Math.exp(logDensity(at))] as const;
  });
  const total = raw.reduce((sum, [, weight]) => sum + weight, 0);
  return raw.map(([at, weight]) => [at, weight / total] as const);
}
