import { studentFactor } from "../student-factor";
import type { LeastSquaresLine } from "./least-squares";

/** A value with the range that goes with a stated chance, both sides together. */
export type ValueInterval = Readonly<{ likely: number; low: number; high: number }>;

/**
 * Where the mean of all results at `x` lies with the given chance: the confidence interval of the line.
 * @source NIST/SEMATECH e-Handbook of Statistical Methods, 4.5.1.1
 */
export const meanOnLine = (line: LeastSquaresLine, x: number, chance: number): ValueInterval =>
  about(line, x, chance, meanError(line, x));

/**
 * Where one new result at `x` lies with the given chance: the prediction interval.
 * @source NIST/SEMATECH e-Handbook of Statistical Methods, 4.5.1.2
 */
export const newResultOnLine = (line: LeastSquaresLine, x: number, chance: number): ValueInterval =>
  about(line, x, chance, newResultError(line, x));

/** Where the slope lies with the given chance. */
export function slopeInterval(line: LeastSquaresLine, chance: number): ValueInterval {
  const reach = studentFactor(chance, line.degreesOfFreedom) * line.slopeError;
  return { likely: line.slope, low: line.slope - reach, high: line.slope + reach };
}

/** Standard error of the line itself at `x`. */
const meanError = ({ residualDeviation, count, meanX, spreadOfX }: LeastSquaresLine, x: number): number =>
  residualDeviation * Math.sqrt(1 / count + (x - meanX) ** 2 / spreadOfX);

/** Standard error of one new result at `x`. */
const newResultError = (line: LeastSquaresLine, x: number): number =>
  Math.hypot(line.residualDeviation, meanError(line, x));

function about(line: LeastSquaresLine, x: number, chance: number, error: number): ValueInterval {
  const likely = line.intercept + line.slope * x;
  const reach = studentFactor(chance, line.degreesOfFreedom) * error;
  return { likely, low: likely - reach, high: likely + reach };
}
