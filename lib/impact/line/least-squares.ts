import { sum } from "./sum";

/** One observation: at `x`, the value `y`. */
export type LinePoint = Readonly<{ x: number; y: number }>;

/** A straight line by ordinary least squares, with what is needed to say how sure it is. */
export type LeastSquaresLine = Readonly<{
  intercept: number;
  slope: number;
  interceptError: number;
  slopeError: number;
  /** Standard deviation of the observations about the line. */
  residualDeviation: number;
  degreesOfFreedom: number;
  meanX: number;
  /** Σ(x − mean x)². */
  spreadOfX: number;
  count: number;
}>;

/** With two places a line always fits and says nothing about scatter; @source derived from the degrees of freedom. */
export const placesNeeded = 3;

/** At how many different x the observations stand. */
export const distinctPlaces = (points: readonly LinePoint[]): number => new Set(points.map(({ x }) => x)).size;

/**
 * @throws RangeError with observations at fewer than `placesNeeded` different x: the caller says so in words first
 * @source least squares, as in NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1
 */
export function leastSquaresLine(points: readonly LinePoint[]): LeastSquaresLine {
  const places = distinctPlaces(points);
  if (places < placesNeeded) throw new RangeError(`a line needs ${placesNeeded} different places, got ${places}`);
  const count = points.length;
  const meanX = sum(points.map(({ x }) => x)) / count;
  const meanY = sum(points.map(({ y }) => y)) / count;
  const spreadOfX = sum(points.map(({ x }) => (x - meanX) ** 2));
  const slope = sum(points.map(({ x, y }) => (x - meanX) * (y - meanY))) / spreadOfX;
  const misfits = points.map(({ x, y }) => y - meanY - slope * (x - meanX));
  const residualDeviation = Math.sqrt(sum(misfits.map((misfit) => misfit ** 2)) / (count - 2));
  return {
    intercept: meanY - slope * meanX,
    slope,
    interceptError: residualDeviation * Math.sqrt(1 / count + meanX ** 2 / spreadOfX),
    slopeError: residualDeviation / Math.sqrt(spreadOfX),
    residualDeviation,
    degreesOfFreedom: count - 2,
    meanX,
    spreadOfX,
    count,
  };
}
