import { crossingOf } from "./standard-normal";

/** Chance of at most `most` hits among `tries`, each with the chance `share`. */
export function atMostHits(most: number, tries: number, share: number): number {
  if (most >= tries || share <= 0) return 1;
  if (share >= 1) return 0;
  let logTerm = tries * Math.log1p(-share);
  let sum = Math.exp(logTerm);
  for (let hits = 1; hits <= most; hits += 1) {
    logTerm += Math.log((tries - hits + 1) / hits) + Math.log(share) - Math.log1p(-share);
    sum += Math.exp(logTerm);
  }
  return Math.min(1, sum);
}

/**
 * The largest share that can be believed in after `hits` among `tries`, with the given confidence.
 * @source Clopper and Pearson (1934), one-sided
 */
export const largestShare = (hits: number, tries: number, confidence: number): number =>
  hits >= tries ? 1 : crossingOf((share) => -atMostHits(hits, tries, share), confidence - 1, [0, 1]);

/** Tries beyond which no plan goes. */
export const mostTries = 20_000;

/** The fewest tries after which at most `allowed` hits show, with the given confidence, that the share is no larger; null beyond `mostTries`. */
export function fewestTries(allowed: number, share: number, confidence: number): number | null {
  const shows = (tries: number) => atMostHits(allowed, tries, share) <= 1 - confidence;
  if (!shows(mostTries)) return null;
  let [low, high] = [allowed, mostTries];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (shows(middle)) high = middle;
    else low = middle;
  }
  return high;
}
