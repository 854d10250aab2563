import { type In, measured } from "#lib/quantity";
import type { FittedDrift } from "./model";
import { rangesOnLine, resultOnLine } from "./property/line-over-age";

/** What a fitted line expects at one age. */
export type Prediction = Readonly<{
  /** The line itself: the mean to be expected. */
  likely: In<"g">;
  low: In<"g">;
  high: In<"g">;
  /** Standard error of one new test result at that age. */
  standardError: In<"g">;
}>;

/**
 * The level to expect at an age, with the range that holds one new test result with the given chance, both sides
 * together. Where levels were stated as ranges, the range is widened by as much as their ends can move the line.
 * @throws RangeError if the chance does not lie between 0 and 1
 * @source prediction interval of simple linear regression, as in NIST/SEMATECH e-Handbook 4.5.1.2; the widening is
 * derived: the line is a weighted sum of the levels
 */
export function predictedLevel(drift: FittedDrift, years: number, chance: number): Prediction {
  const { likely, low, high } = rangesOnLine(drift, chance)(years);
  return {
    likely: measured("impactLevel", likely),
    low: measured("impactLevel", low),
    high: measured("impactLevel", high),
    standardError: measured("impactLevel", resultOnLine(drift, years).standardError),
  };
}
