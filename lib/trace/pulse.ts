import { type In, measured } from "#lib/quantity";
import { peakIndex } from "./baseline";
import type { Pulse, Trace } from "./model";

/** Where a pulse counts as begun and ended. @source our stated convention: no method in reach prescribes it */
export const pulseThreshold = { shareOfPeak: 0.02, atLeast: measured("impactLevel", 1) } as const;

/**
 * The pulse around the highest level: from the last rise through the threshold before it to the first fall after it.
 * Null where no level reaches the threshold. The levels have to be above their baseline.
 */
export function impactPulse({ levels }: Trace): Pulse | null {
  const peak = peakIndex(levels);
  const highest = levels[peak] ?? 0;
  const threshold = Math.max(pulseThreshold.atLeast, pulseThreshold.shareOfPeak * highest);
  if (!(highest > threshold)) return null;
  const before = levels.slice(0, peak).findLastIndex((level) => level < threshold);
  const after = levels.findIndex((level, index) => index > peak && level < threshold);
  const [missingBefore, missingAfter] = [before < 0, after < 0];
  return {
    peak,
    onset: missingBefore ? 0 : crossing(levels, before, threshold),
    end: missingAfter ? levels.length - 1 : crossing(levels, after - 1, threshold),
    threshold: measured("impactLevel", threshold),
    recorded: missingBefore
      ? missingAfter
        ? "cut-off-on-both-sides"
        : "cut-off-before"
      : missingAfter
        ? "cut-off-after"
        : "whole",
  };
}

/** Where the straight line from a sample to the next one meets the threshold. */
function crossing(levels: readonly In<"g">[], index: number, threshold: number): number {
  const [here, next] = [levels[index] ?? threshold, levels[index + 1] ?? threshold];
  return index + (threshold - here) / (next - here);
}
