import { measured } from "#lib/quantity";
import type { Trace } from "./model";

/** Channel frequency classes in use for impacts. @source SAE J211-1 and ISO 6487, from memory */
export const channelClasses = [60, 180, 600, 1000] as const;
export type ChannelClass = (typeof channelClasses)[number];

/** A two-pole filter y = b0·x + b1·x′ + b2·x″ − a1·y′ − a2·y″, dashes for one and two samples before. */
export type FilterConstants = Readonly<{ b0: number; b1: number; b2: number; a1: number; a2: number }>;

/** Ratio of the design frequency of one pass to the class in Hz. @source SAE J211-1 (1995), appendix C, as public implementations quote it */
const designRatio = 2.0775;

/** Samples a second that the class asks for, as a multiple of it. @source SAE J211-1, from memory: ten times the class */
const samplesPerClass = 10;

export type Sampling = "as-the-class-asks" | "slower-than-the-class-asks" | "too-slow-to-filter";

/** Whether samples come fast enough for a class: ten times the class is asked for; below twice the design frequency nothing can be filtered. */
export function samplingFor(channelClass: ChannelClass, interval: number): Sampling {
  const rate = 1 / interval;
  if (rate <= 2.02 * designRatio * channelClass) return "too-slow-to-filter";
  return rate >= samplesPerClass * channelClass * (1 - 1e-9) ? "as-the-class-asks" : "slower-than-the-class-asks";
}

/**
 * Constants of one pass of the class's low-pass filter: a Butterworth filter of two poles, by the bilinear transform.
 * @source SAE J211-1 (1995), appendix C, as public implementations quote it
 */
export function filterConstants(channelClass: ChannelClass, interval: number): FilterConstants {
  const warped = Math.tan(Math.PI * channelClass * designRatio * interval);
  const divisor = 1 + Math.SQRT2 * warped + warped ** 2;
  const b0 = warped ** 2 / divisor;
  return {
    b0,
    b1: 2 * b0,
    b2: b0,
    a1: (2 * (warped ** 2 - 1)) / divisor,
    a2: (1 - Math.SQRT2 * warped + warped ** 2) / divisor,
  };
}

/** One pass that starts as if the first sample had lasted forever, so that a steady level causes no swing. */
function onePass(samples: readonly number[], { b0, b1, b2, a1, a2 }: FilterConstants): number[] {
  const first = samples[0] ?? 0;
  let near = (b1 + b2 - a1 - a2) * first;
  let far = (b2 - a2) * first;
  return samples.map((sample) => {
    const passed = b0 * sample + near;
    near = b1 * sample - a1 * passed + far;
    far = b2 * sample - a2 * passed;
    return passed;
  });
}

/** Samples mirrored about each end before filtering. @source three times the number of constants, as SciPy filtfilt does */
const mirrored = 9;

/** The samples with their mirror images, turned about the end points, at both ends. */
function extended(samples: readonly number[]): number[] {
  const [first = 0, last = 0] = [samples[0], samples.at(-1)];
  const before = samples.slice(1, mirrored + 1).map((sample) => 2 * first - sample);
  const after = samples.slice(-mirrored - 1, -1).map((sample) => 2 * last - sample);
  return [...before.reverse(), ...samples, ...after.reverse()];
}

/**
 * The trace through the low-pass filter of a channel frequency class: once forwards and once backwards, four poles
 * together, which leaves every peak at its time. Class 1000 passes 1650 Hz with −3 dB.
 * @throws RangeError if samples come too slowly, or if there are fewer than ten: see `samplingFor`
 * @source SAE J211-1 and ISO 6487; start of each pass and ends as in SciPy filtfilt
 */
export function filteredTrace({ interval, levels }: Trace, channelClass: ChannelClass): Trace {
  if (samplingFor(channelClass, interval) === "too-slow-to-filter" || levels.length <= mirrored)
    throw new RangeError(`no class ${channelClass} filter for ${levels.length} samples every ${interval} s`);
  const constants = filterConstants(channelClass, interval);
  const forwards = onePass(extended(levels), constants);
  const backwards = onePass(forwards.reverse(), constants).reverse();
  const filtered = backwards.slice(mirrored, mirrored + levels.length);
  return { interval, levels: filtered.map((level) => measured("impactLevel", level)) };
}
