import { tooFewAges } from "../line/aged-lines";
import { distinctPlaces, leastSquaresLine, placesNeeded } from "../line/least-squares";
import { studentFactor } from "../student-factor";
import type { AgedValue, LineOverAge, ValueSpan } from "./model";

/** Whether both sides are stated. */
export const isClosedValue = ({ low, high }: Readonly<{ low: number; high: number }>): boolean =>
  Number.isFinite(low) && Number.isFinite(high);

/**
 * The line through the middles of values by age; values that are open on one side carry no middle and are left out.
 * @source derived: least squares, as in NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1
 */
export function lineOverAge(
  values: readonly AgedValue[],
): Readonly<{ kind: "fitted"; line: LineOverAge } | { kind: "not-enough"; distinctAges: number; reason: string }> {
  const closed = values.filter(isClosedValue);
  const places = closed.map(({ years, low, high }) => ({ x: years, y: (low + high) / 2 }));
  const distinctAges = distinctPlaces(places);
  if (distinctAges < placesNeeded) return { kind: "not-enough", distinctAges, reason: tooFewAges(distinctAges) };
  const { meanX, spreadOfX, slope, intercept, slopeError, interceptError, residualDeviation, degreesOfFreedom } =
    leastSquaresLine(places);
  const points = closed.map(({ years, low, high }) => ({ years, halfWidth: (high - low) / 2 }));
  return {
    kind: "fitted",
    line: {
      ...{ slope, intercept, slopeError, interceptError, residualDeviation, degreesOfFreedom },
      ...{ meanAge: meanX, spreadOfAges: spreadOfX, points },
    },
  };
}

/** How a new result at an age comes about: the line, its standard error and what stated ranges add to either side. */
export function resultOnLine(
  { points, meanAge, spreadOfAges, residualDeviation, intercept, slope }: LineOverAge,
  years: number,
): Readonly<{ likely: number; standardError: number; widening: number }> {
  const distance = years - meanAge;
  const standardError = residualDeviation * Math.sqrt(1 + 1 / points.length + distance ** 2 / spreadOfAges);
  const widening = points.reduce((total, point) => {
    const weight = 1 / points.length + (distance * (point.years - meanAge)) / spreadOfAges;
    return total + Math.abs(weight) * point.halfWidth;
  }, 0);
  return { likely: intercept + slope * years, standardError, widening };
}

/** The range of one new result at any age; the factor of Student's t is looked up once. */
export function rangesOnLine(line: LineOverAge, chance: number): (years: number) => ValueSpan {
  const factor = studentFactor(chance, line.degreesOfFreedom);
  return (years) => {
    const { likely, standardError, widening } = resultOnLine(line, years);
    const reach = factor * standardError + widening;
    return { likely, low: likely - reach, high: likely + reach };
  };
}
