import { type In, measured } from "#lib/quantity";
import type { Trace } from "./model";
import { runningIntegral } from "./running-integral";
import { steepestInterval } from "./steepest-interval";

/** How long the interval may be: any length, or the caps that automotive rules write as 15 and 36 in the name. */
export const criterionWindows = { "any-length": Number.POSITIVE_INFINITY, "15-ms": 0.015, "36-ms": 0.036 } as const;
export type CriterionWindow = keyof typeof criterionWindows;

/** The head injury criterion and the interval that gives it. */
export type HeadInjuryCriterion = Readonly<{
  value: number;
  /** Times from the first sample. */
  from: In<"s">;
  to: In<"s">;
  meanLevel: In<"g">;
}>;

/**
 * Head injury criterion: the largest (t₂ − t₁) · (mean level between t₁ and t₂)^2.5 over all pairs of samples, with levels
 * in g and times in s, and straight lines between samples. Zero where no interval has a mean above zero.
 * @source definition as in ASTM F1292 and EN 1177, from memory; 49 CFR 571.208 for the caps of 15 and 36 ms, from memory
 */
export function headInjuryCriterion({ levels, interval }: Trace, window: CriterionWindow): HeadInjuryCriterion {
  const totals = runningIntegral(levels, interval);
  // a cap of a whole number of steps stays whole when divided by an interval with rounding in its last bits
  const found = steepestInterval(totals, criterionWindows[window] / interval + 1e-6);
  if (found === null)
    return { value: 0, from: measured("time", 0), to: measured("time", 0), meanLevel: measured("impactLevel", 0) };
  const length = (found.to - found.from) * interval;
  const mean = ((totals[found.to] ?? 0) - (totals[found.from] ?? 0)) / length;
  return {
    value: length * mean ** 2.5,
    from: measured("time", found.from * interval),
    to: measured("time", found.to * interval),
    meanLevel: measured("impactLevel", mean),
  };
}
