/** Terms after which neither the series nor the fraction changes any more in the range where each is used. */
const terms = 200;

const density = (x: number): number => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);

/**
 * Chance that a standard normal value stays below x.
 * @source series and continued fraction as in Abramowitz and Stegun 26.2.11 and 26.2.14, from memory
 */
export function normalBelow(x: number): number {
  if (Math.abs(x) > 5) {
    let fraction = 0;
    for (let term = terms; term >= 1; term -= 1) fraction = term / (Math.abs(x) + fraction);
    const tail = density(x) / (Math.abs(x) + fraction);
    return x < 0 ? tail : 1 - tail;
  }
  let term = x;
  let sum = x;
  for (let odd = 3; odd < 2 * terms; odd += 2) {
    term *= (x * x) / odd;
    sum += term;
  }
  return 0.5 + density(x) * sum;
}

/** Halvings that exhaust the digits of a number. */
const halvings = 100;

/** Where a rising function passes a level, between two bounds that enclose it. */
export function crossingOf(rising: (at: number) => number, level: number, within: readonly [number, number]): number {
  let [low, high] = within;
  for (let halving = 0; halving < halvings; halving += 1) {
    const middle = (low + high) / 2;
    if (rising(middle) < level) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The value below which a standard normal value stays with the given chance. @throws RangeError outside 0 to 1 */
export function normalQuantile(chance: number): number {
  if (!(chance > 0 && chance < 1)) throw new RangeError(`the chance must lie between 0 and 1, got ${chance}`);
  return crossingOf(normalBelow, chance, [-40, 40]);
}
