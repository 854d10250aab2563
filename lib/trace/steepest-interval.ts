/** Two samples, the first before the second. */
export type SampleInterval = Readonly<{ from: number; to: number }>;

/** Totals by sample in both orders, and the 0.6th power of each number of steps. */
type Search = Readonly<{ totals: Float64Array; reversed: Float64Array; powers: Float64Array }>;

const rise = ({ totals }: Search, from: number, to: number): number => (totals[to] ?? 0) - (totals[from] ?? 0);

const steepness = (search: Search, { from, to }: SampleInterval): number =>
  rise(search, from, to) / (search.powers[to - from] ?? 1);

/**
 * The pair of samples with the largest rise ÷ length^0.6 of a running total; the rise to the power 2.5 over the length
 * to the power 1.5 is largest for the same pair. Null where the total never rises.
 *
 * Dinkelbach's method: for a given ratio, find the interval with the largest surplus, rise − ratio · length^0.6, and
 * raise the ratio to the steepness of that interval until none has a surplus. It ends after a handful of rounds, each
 * O(n log n): see `sweep`.
 * @param longest largest number of steps between the two samples
 * @source W. Dinkelbach, On nonlinear fractional programming, Management Science 13 (1967), from memory
 */
export function steepestInterval(totals: readonly number[], longest: number): SampleInterval | null {
  const reach = Math.min(Math.floor(longest), totals.length - 1);
  if (reach < 1) return null;
  const search: Search = {
    totals: Float64Array.from(totals),
    reversed: Float64Array.from(totals).reverse(),
    powers: Float64Array.from({ length: totals.length }, (_, steps) => steps ** 0.6),
  };
  let best = grownAroundSteepestStep(search, reach);
  if (!(steepness(search, best) > 0)) return null;
  for (;;) {
    const better = largestSurplus(search, reach, best);
    if (!(steepness(search, better) > steepness(search, best))) return best;
    best = better;
  }
}

/** A good first interval: the steepest step, grown on the side that rises more; the steepest on the way. */
function grownAroundSteepestStep(search: Search, reach: number): SampleInterval {
  const last = search.totals.length - 1;
  let first = 0;
  for (let step = 1; step < last; step += 1)
    if (rise(search, step, step + 1) > rise(search, first, first + 1)) first = step;
  let [from, to] = [first, first + 1];
  let best = { from, to };
  while (to - from < reach) {
    const before = from > 0 ? rise(search, from - 1, from) : Number.NEGATIVE_INFINITY;
    const after = to < last ? rise(search, to, to + 1) : Number.NEGATIVE_INFINITY;
    if (!(Math.max(before, after) > 0)) break;
    if (before > after) from -= 1;
    else to += 1;
    if (steepness(search, { from, to }) > steepness(search, best)) best = { from, to };
  }
  return best;
}

/**
 * The interval with the largest surplus over the steepness of `start`, or `start` where none has any. The samples are
 * cut into blocks as long as an interval may be, so that an interval lies in one block or in two neighbours.
 */
function largestSurplus(search: Search, reach: number, start: SampleInterval): SampleInterval {
  const { totals, reversed, powers } = search;
  const last = totals.length - 1;
  const ratio = steepness(search, start);
  const block = Math.min(reach, lengthWithin(search, ratio));
  const costs = powers.map((power) => ratio * power);
  // leaving out its first step would better an interval whose first step rises less than this
  const leastRise = (costs[block] ?? 0) - (costs[block - 1] ?? 0);
  const found = { surplus: 0, from: start.from, to: start.to };
  for (let first = 0; first < last; first += block) {
    const end = Math.min(first + block, last);
    sweep(
      { starts: totals.subarray(first, end), costs: costs.subarray(1), leastRise, totals },
      { firstStart: first, firstEnd: first + 1, towards: 1 },
      found,
    );
    if (end === last) break;
    // from the farthest end back: each end adds the start that has just come into reach
    const startsBack = reversed.subarray(last - end + 1, last - first + 1);
    const costsBack = costs.slice(1, block + 1).reverse();
    sweep(
      { starts: startsBack.subarray(0, block - 1), costs: costsBack, leastRise, totals },
      { firstStart: end - 1, firstEnd: end - 1 + block, towards: -1 },
      found,
    );
  }
  return { from: found.from, to: found.to };
}

/** Steps beyond which no interval can be as steep as the ratio, because the totals do not rise that far. */
function lengthWithin({ totals }: Search, ratio: number): number {
  let [low, highest] = [Number.POSITIVE_INFINITY, 0];
  for (const total of totals) {
    low = Math.min(low, total);
    highest = Math.max(highest, total - low);
  }
  return Math.ceil((highest / ratio) ** (1 / 0.6) * (1 + 1e-9)) + 1;
}

/** What a sweep works on: totals at its starts in order of their coming, and the cost of a length by steps since then. */
type Field = Readonly<{ starts: Float64Array; costs: Float64Array; leastRise: number; totals: Float64Array }>;
/** Where starts and ends stand, and which way both move: 1 forwards, −1 backwards. */
type Walk = Readonly<{ firstStart: number; firstEnd: number; towards: 1 | -1 }>;

/**
 * Puts the interval with the largest surplus into `found`. Every step brings one more start and moves to the next end.
 *
 * Two intervals that end together differ in cost by the 0.6th power of their lengths, which bends downwards. So a newer
 * start only loses ground to an older one, in either direction: once overtaken, it is never best again. A stack of
 * starts, each with the step at which the one below takes over, has the best start of every end on top; a takeover is
 * found by halving. Every start is put on and taken off once: O(n log n).
 * @source the stack known from dynamic programs with such costs, Galil and Giancarlo (1989), from memory
 */
function sweep(
  { starts, costs, leastRise, totals }: Field,
  { firstStart, firstEnd, towards }: Walk,
  found: Found,
): void {
  const steps = starts.length;
  const stack = new Int32Array(steps);
  const overtaken = new Int32Array(steps);
  let size = 0;
  const burden = (start: number, step: number) => (starts[start] as number) + (costs[step - start] as number);
  const worseAt = (step: number, older: number, newer: number) => burden(older, step) > burden(newer, step);
  /** The first step after `after` and up to `before` at which the older start is no worse than the newer one. */
  const takeover = (older: number, newer: number, after: number, before: number): number => {
    let [low, high] = [after, before];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (burden(older, middle) <= burden(newer, middle)) high = middle;
      else low = middle;
    }
    return high;
  };
  for (let step = 0; step < steps; step += 1) {
    while (size > 0 && (overtaken[size - 1] as number) <= step) size -= 1;
    const place = firstStart + towards * step;
    const mayStart = (totals[place + 1] as number) - (totals[place] as number) >= leastRise;
    if (mayStart && (size === 0 || burden(step, step) < burden(stack[size - 1] as number, step))) {
      // a start that is overtaken from below before it could overtake the newest is never best again
      while (size > 1 && worseAt((overtaken[size - 1] as number) - 1, stack[size - 1] as number, step)) size -= 1;
      overtaken[size] =
        size === 0 ? steps : takeover(stack[size - 1] as number, step, step, overtaken[size - 1] as number);
      stack[size] = step;
      size += 1;
    }
    const end = firstEnd + towards * step;
    if (size === 0 || end >= totals.length) continue;
    const start = stack[size - 1] as number;
    const surplus = (totals[end] as number) - burden(start, step);
    if (surplus > found.surplus) {
      found.surplus = surplus;
      found.from = firstStart + towards * start;
      found.to = end;
    }
  }
}

/** The best interval so far, written to as the sweeps go. */
type Found = { surplus: number; from: number; to: number };
