/** Conventional standard gravity, m/s² (NIST SP 811). */
const gravity = 9.80665;

/** Deceleration in g at equal steps of time, in s. */
export type Pulse = Readonly<{ step: number; levels: readonly number[] }>;

/** The head injury criterion by trying every window of the record, with nothing but its definition. */
export function criterionOf({ step, levels }: Pulse): number {
  const sums = [0];
  for (const [at, level] of levels.slice(1).entries()) {
    sums.push((sums.at(-1) ?? 0) + ((level + (levels[at] ?? 0)) / 2) * step);
  }
  let highest = 0;
  for (let from = 0; from < sums.length; from += 1) {
    for (let to = from + 1; to < sums.length; to += 1) {
      const seconds = (to - from) * step;
      const mean = ((sums[to] ?? 0) - (sums[from] ?? 0)) / seconds;
      highest = Math.max(highest, mean > 0 ? seconds * mean * mean * Math.sqrt(mean) : 0);
    }
  }
  return highest;
}

export const peakOf = ({ levels }: Pulse): number => Math.max(...levels);

/** A shape over 0…1 as a pulse of that peak, in g, and duration, in s. */
export function sampled(shape: (at: number) => number, peak: number, duration: number, samples = 200): Pulse {
  const levels = Array.from({ length: samples + 1 }, (_, index) => peak * shape(index / samples));
  return { step: duration / samples, levels };
}

/** A surface: what it answers in g at a depth in m, and the share of that which it gives back on the way up. */
export type Surface = Readonly<{ stiffness: number; exponent: number; givenBack: number }>;

/** 40 ms: no peak of a fall from 1.3 m that turf gives comes later. In steps of 10 µs. */
const longestRecord = 4000;

/**
 * The record of a missile that falls freely onto a surface, step by step by Newton's second law.
 * @param height in m
 */
export function fallOnto({ stiffness, exponent, givenBack }: Surface, height: number): Pulse {
  const fine = 1e-5; // s
  const levels: number[] = [];
  let [depth, speed] = [0, Math.sqrt(2 * gravity * height)];
  for (let count = 0; count < longestRecord && depth >= 0; count += 1) {
    const answer = stiffness * depth ** exponent * (speed > 0 ? 1 : givenBack);
    levels.push(answer);
    speed += (1 - answer) * gravity * fine;
    depth += speed * fine;
  }
  const every = Math.max(1, Math.ceil(levels.length / 300));
  return { step: fine * every, levels: levels.filter((_, index) => index % every === 0) };
}
