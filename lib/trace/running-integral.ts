/**
 * Integral of a trace from its first sample to each sample, levels joined by straight lines.
 * @returns one value a sample, in the unit of the levels times seconds; the first is 0
 */
export function runningIntegral(levels: readonly number[], interval: number): number[] {
  let total = 0;
  let before = levels[0] ?? 0;
  return levels.map((level, index) => {
    if (index > 0) total += ((before + level) / 2) * interval;
    before = level;
    return total;
  });
}

/** The level at a place between samples. */
export function levelAt(levels: readonly number[], place: number): number {
  const index = Math.min(Math.max(Math.floor(place), 0), levels.length - 1);
  const here = levels[index] ?? 0;
  const next = levels[index + 1] ?? here;
  return here + (next - here) * (place - index);
}
