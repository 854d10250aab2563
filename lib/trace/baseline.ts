import { type In, measured } from "#lib/quantity";
import type { Trace } from "./model";

/** What the sensor did before the impact: fell freely from the first sample, or hung still and was let go. */
export type LeadIn = "free-fall" | "hanging-then-free-fall";

/** Fewest quiet samples that make a mean. */
const fewestQuiet = 10;
/** Share of the way from the quiet level to the peak at which the quiet part is taken to be over. */
const quietShare = 0.05;
/** Share of the quiet part next to the impact that is left out, where a filter already feels the impact. */
const guardShare = 0.1;

/** The level of free fall before the impact, which counts as zero. */
export type Baseline = Readonly<
  | {
      kind: "removed";
      level: In<"g">;
      samples: number;
      /** Standard deviation of the quiet samples. */
      noise: In<"g">;
      /** Index of the first sample after the release; null where the fall began before the trace. */
      release: number | null;
    }
  | { kind: "not-removed"; because: "too-few-quiet-samples" | "no-release-found"; quietSamples: number }
>;

/**
 * Mean of the samples before the impact, in g; where the sensor first hung still, of those after the release.
 * @source common practice, no source: the mean of the quiet part counts as zero
 */
export function baseline({ levels }: Trace, leadIn: LeadIn): Baseline {
  const quiet = quietPart(levels);
  const quietSamples = quiet.length;
  if (quietSamples < fewestQuiet) return { kind: "not-removed", because: "too-few-quiet-samples", quietSamples };
  const release = leadIn === "free-fall" ? null : releaseIn(quiet);
  if (leadIn === "hanging-then-free-fall" && release === null)
    return { kind: "not-removed", because: "no-release-found", quietSamples };
  const falling = quiet.slice(release ?? 0);
  const level = mean(falling);
  const noise = Math.sqrt(mean(falling.map((sample) => (sample - level) ** 2)));
  return {
    kind: "removed",
    level: measured("impactLevel", level),
    samples: falling.length,
    noise: measured("impactLevel", noise),
    release,
  };
}

/** The trace with the level of free fall at zero. */
export const aboveBaseline = ({ interval, levels }: Trace, found: Baseline): Trace =>
  found.kind === "not-removed"
    ? { interval, levels }
    : { interval, levels: levels.map((level) => measured("impactLevel", level - found.level)) };

const mean = (samples: readonly number[]): number =>
  samples.reduce((sum, sample) => sum + sample, 0) / Math.max(samples.length, 1);

/** Index of the highest level. */
export const peakIndex = (levels: readonly number[]): number =>
  levels.reduce((best, level, index) => (level > (levels[best] ?? level) ? index : best), 0);

/** The samples before the level begins to rise to the peak. */
function quietPart(levels: readonly number[]): readonly number[] {
  const peak = peakIndex(levels);
  const before = levels.slice(0, peak);
  const low = before.toSorted((a, b) => a - b)[Math.floor(before.length / 10)] ?? 0;
  const threshold = low + quietShare * ((levels[peak] ?? 0) - low);
  const end = before.findLastIndex((level) => level < threshold) + 1;
  return before.slice(0, Math.floor(end * (1 - guardShare)));
}

/** Sum of the samples before each index, and of all of them at the end. */
function runningSums(samples: readonly number[]): readonly number[] {
  const sums = [0];
  for (const sample of samples) sums.push((sums.at(-1) ?? 0) + sample);
  return sums;
}

/** Levels at which a step of the quiet part counts as being let go: hanging still reads 1 g more than falling. */
const releaseStep = { low: 0.75, high: 1.25 };

/** The step that best splits the samples in two levels, by least squares, if it is a fall of about 1 g. */
function releaseIn(samples: readonly number[]): number | null {
  const count = samples.length;
  const sums = runningSums(samples);
  const sumTo = (index: number) => sums[index] ?? 0;
  const fallAt = (index: number) => sumTo(index) / index - (sumTo(count) - sumTo(index)) / (count - index);
  let best = 0;
  let most = 0;
  for (let index = fewestQuiet; index <= count - fewestQuiet; index += 1) {
    const gain = (fallAt(index) ** 2 * index * (count - index)) / count;
    if (gain > most) [best, most] = [index, gain];
  }
  if (best === 0) return null;
  const fall = fallAt(best);
  return fall >= releaseStep.low && fall <= releaseStep.high ? best : null;
}
