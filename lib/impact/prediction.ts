import { type In, measured } from "#lib/quantity";
import type { FittedDrift } from "./model";
import { studentFactor } from "./student-factor";

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
export const predictedLevel = (drift: FittedDrift, years: number, chance: number): Prediction =>
  predictionsBy(drift, chance)(years);

/** The same for one line and chance at any age; the factor of Student's t is looked up once. */
export function predictionsBy(drift: FittedDrift, chance: number): (years: number) => Prediction {
  const factor = studentFactor(chance, drift.degreesOfFreedom);
  return (years) => predictedWith(drift, years, factor);
}

function predictedWith(drift: FittedDrift, years: number, factor: number): Prediction {
  const { points, meanAge, spreadOfAges, residualDeviation } = drift;
  const distance = years - meanAge;
  const standardError = residualDeviation * Math.sqrt(1 + 1 / points.length + distance ** 2 / spreadOfAges);
  const widening = points.reduce((total, point) => {
    const weight = 1 / points.length + (distance * (point.years - meanAge)) / spreadOfAges;
    return total + Math.abs(weight) * point.halfWidth;
  }, 0);
  const likely = drift.intercept + drift.slope * years;
  const reach = factor * standardError + widening;
  return {
    likely: measured("impactLevel", likely),
    low: measured("impactLevel", likely - reach),
    high: measured("impactLevel", likely + reach),
    standardError: measured("impactLevel", standardError),
  };
}
