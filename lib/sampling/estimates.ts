import { normalQuantile } from "./normal-share";

/** A figure from samples and how far it may be off by chance: one standard error. */
export type Estimate = Readonly<{ value: number; standardError: number }>;

/** Two ends that hold the true figure with the confidence asked for. */
export type Between = Readonly<{ low: number; high: number }>;

const deviationsFor = (confidence: number): number => normalQuantile((1 + confidence) / 2);

/**
 * Mean of samples and its standard error, s ÷ √N; the error of a single sample is not known and infinite.
 * @throws RangeError without a sample
 * @source two-pass sums, derived
 */
export function meanEstimate(samples: ArrayLike<number>): Estimate & Readonly<{ deviation: number }> {
  const count = samples.length;
  if (count === 0) throw new RangeError("a mean needs a sample");
  let sum = 0;
  for (let index = 0; index < count; index += 1) sum += samples[index] as number;
  const value = sum / count;
  let squares = 0;
  for (let index = 0; index < count; index += 1) squares += ((samples[index] as number) - value) ** 2;
  const deviation = count > 1 ? Math.sqrt(squares / (count - 1)) : Number.POSITIVE_INFINITY;
  return { value, deviation, standardError: deviation / Math.sqrt(count) };
}

/**
 * Share of tries that came out, and its standard error √(p(1 − p) ÷ N).
 * @param hits may be a half where ties are shared
 * @throws RangeError unless hits lie from 0 to tries, and tries above 0
 */
export function shareEstimate(hits: number, tries: number): Estimate {
  if (!(tries > 0 && hits >= 0 && hits <= tries)) throw new RangeError(`${hits} hits of ${tries} tries are no share`);
  const value = hits / tries;
  return { value, standardError: Math.sqrt((value * (1 - value)) / tries) };
}

/**
 * Ends for the true share behind `hits` of `tries`. Unlike the standard error it has a width at 0 % and at 100 % too.
 * @source Wilson’s score interval, Journal of the American Statistical Association 22, 1927, from memory
 */
export function shareInterval(hits: number, tries: number, confidence = 0.95): Between {
  const { value } = shareEstimate(hits, tries);
  const square = deviationsFor(confidence) ** 2;
  const centre = value + square / (2 * tries);
  const half = Math.sqrt(square * ((value * (1 - value)) / tries + square / (4 * tries * tries)));
  const whole = 1 + square / tries;
  return { low: hits === 0 ? 0 : (centre - half) / whole, high: hits === tries ? 1 : (centre + half) / whole };
}

/**
 * The value that a share of sorted samples stays below, between neighbours in proportion.
 * @param sorted rising, at least one
 * @source definition 7 of Hyndman and Fan, The American Statistician 50, 1996: the rule of numpy and of spreadsheets
 */
export function sampleQuantile(sorted: ArrayLike<number>, chance: number): number {
  const place = chance * (sorted.length - 1);
  const below = Math.min(Math.max(Math.floor(place), 0), sorted.length - 1);
  const low = sorted[below] as number;
  const high = sorted[Math.min(below + 1, sorted.length - 1)] as number;
  return low + (place - below) * (high - low);
}

/**
 * Ends that hold the true quantile, read off the sorted samples: no shape of the distribution is assumed. An end beyond
 * the samples is the outermost one, and too few samples to say more show as that.
 * @source order statistics with the normal approximation of the binomial; wants N·p and N·(1 − p) of 10 or more
 */
export function quantileInterval(sorted: ArrayLike<number>, chance: number, confidence = 0.95): Between {
  const count = sorted.length;
  const half = deviationsFor(confidence) * Math.sqrt(count * chance * (1 - chance));
  const at = (place: number) => sorted[Math.min(count - 1, Math.max(0, place))] as number;
  return { low: at(Math.floor(count * chance - half) - 1), high: at(Math.ceil(count * chance + half)) };
}

/** Samples that bring the standard error of a share down to `error`, at the worst share of one half, or at a known one. */
export const samplesForShare = (error: number, share = 0.5): number => Math.ceil((share * (1 - share)) / error ** 2);

/** When enough has been drawn: the mean is known to a part of itself, or a share to so much. */
export type StopAt = Readonly<{ meanWithin: number; shareWithin: number }>;

/** @source common practice, no source */
export const usualStop: StopAt = { meanWithin: 0.001, shareWithin: 0.005 };

/** Whether means and shares are known well enough to stop drawing. */
export function isEnough(means: readonly Estimate[], shares: readonly Estimate[], stop: StopAt = usualStop): boolean {
  const meansKnown = means.every(({ value, standardError }) => standardError <= stop.meanWithin * Math.abs(value));
  return meansKnown && shares.every(({ standardError }) => standardError <= stop.shareWithin);
}
