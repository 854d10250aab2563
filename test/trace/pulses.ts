import { measured } from "#lib/quantity";
import type { Trace } from "#lib/trace";

/** Levels in g at an even pace. */
export const traceOf = (levels: readonly number[], interval: number): Trace => ({
  interval: measured("time", interval),
  levels: levels.map((level) => measured("impactLevel", level)),
});

/** Shapes over a time from 0 to 1, with a peak of 1. */
export const shapes = {
  rectangle: () => 1,
  parabola: (x: number) => 1 - (2 * x - 1) ** 2,
  "half-sine": (x: number) => Math.sin(Math.PI * x),
  haversine: (x: number) => Math.sin(Math.PI * x) ** 2,
  triangle: (x: number) => Math.min(x, 1 - x) * 2,
  "leaning triangle": (x: number) => (x < 0.25 ? x / 0.25 : (1 - x) / 0.75),
} as const satisfies Record<string, (x: number) => number>;

export type Shape = keyof typeof shapes;

/** A pulse alone, from its first to its last moment. */
export const pulseOf = (shape: Shape, peak: number, duration: number, steps: number): Trace =>
  traceOf(
    Array.from({ length: steps + 1 }, (_, index) => peak * shapes[shape](index / steps)),
    duration / steps,
  );

/** A half-sine with quiet samples before and after. */
export const recordedPulse = (peak: number, duration: number, steps: number, quiet: number, offset = 0): Trace => {
  const { levels, interval } = pulseOf("half-sine", peak, duration, steps);
  const still = Array.from({ length: quiet }, () => offset);
  return traceOf([...still, ...levels.map((level) => level + offset), ...still], interval);
};
