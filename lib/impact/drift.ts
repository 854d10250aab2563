import { measured } from "#lib/quantity";
import type { Drift, PointInTime } from "./model";

/** With two ages a line always fits and says nothing about scatter; @source derived from the degrees of freedom. */
const agesNeeded = 3;

/**
 * Change of level with age: ordinary least squares of the middles of the levels on age.
 * Levels that are open on one side carry no middle and are left out.
 * @source derived: least squares, as in NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1
 */
export function driftFromAgedPoints(points: readonly PointInTime[]): Drift {
  const closed = points.filter(isClosed);
  const distinctAges = new Set(closed.map(({ years }) => years)).size;
  if (distinctAges < agesNeeded) return { kind: "not-enough-points", distinctAges, reason: tooFew(distinctAges) };
  const count = closed.length;
  const meanAge = mean(closed.map(({ years }) => years));
  const meanLevel = mean(closed.map(middle));
  const spreadOfAges = sum(closed.map(({ years }) => (years - meanAge) ** 2));
  const slope = sum(closed.map((point) => (point.years - meanAge) * (middle(point) - meanLevel))) / spreadOfAges;
  const misfits = closed.map((point) => middle(point) - meanLevel - slope * (point.years - meanAge));
  const residual = Math.sqrt(sum(misfits.map((misfit) => misfit ** 2)) / (count - 2));
  return {
    kind: "fitted",
    slope: measured("rateOfChange", slope),
    intercept: measured("impactLevel", meanLevel - slope * meanAge),
    slopeError: measured("rateOfChange", residual / Math.sqrt(spreadOfAges)),
    interceptError: measured("impactLevel", residual * Math.sqrt(1 / count + meanAge ** 2 / spreadOfAges)),
    residualDeviation: measured("impactLevel", residual),
    degreesOfFreedom: count - 2,
    meanAge,
    spreadOfAges,
    points: closed.map(({ years, level }) => ({
      years,
      halfWidth: measured("impactLevel", (level.high - level.low) / 2),
    })),
  };
}

/** Whether both sides of the level are stated. */
export const isClosed = ({ level }: Pick<PointInTime, "level">): boolean =>
  Number.isFinite(level.low) && Number.isFinite(level.high);

const middle = ({ level }: PointInTime): number => (level.low + level.high) / 2;
const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);
const mean = (numbers: readonly number[]): number => sum(numbers) / numbers.length;

const tooFew = (distinctAges: number): string =>
  `A line with an honest spread needs levels at ${agesNeeded} different ages; the bid gives ${
    distinctAges === 0 ? "none" : distinctAges
  } with both sides stated.`;
