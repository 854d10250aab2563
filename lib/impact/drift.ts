import { measured } from "#lib/quantity";
import type { Drift, FittedDrift, PointInTime } from "./model";
import { lineOverAge } from "./property/line-over-age";
import type { LineOverAge } from "./property/model";

/**
 * Change of level with age: ordinary least squares of the middles of the levels on age.
 * Levels that are open on one side carry no middle and are left out.
 */
export function driftFromAgedPoints(points: readonly PointInTime[]): Drift {
  const fit = lineOverAge(
    points.map(({ years, level: { low, high }, field, fields }) => ({ years, low, high, field, fields })),
  );
  return fit.kind === "fitted"
    ? fittedDrift(fit.line)
    : { kind: "not-enough-points", distinctAges: fit.distinctAges, reason: fit.reason };
}

/** A line through impact levels, in units. */
export const fittedDrift = ({ points, ...line }: LineOverAge): FittedDrift => ({
  kind: "fitted",
  slope: measured("rateOfChange", line.slope),
  intercept: measured("impactLevel", line.intercept),
  slopeError: measured("rateOfChange", line.slopeError),
  interceptError: measured("impactLevel", line.interceptError),
  residualDeviation: measured("impactLevel", line.residualDeviation),
  degreesOfFreedom: line.degreesOfFreedom,
  meanAge: line.meanAge,
  errorAtMeanAge: measured("impactLevel", line.errorAtMeanAge),
  points: points.map((point) => ({ ...point, halfWidth: measured("impactLevel", point.halfWidth) })),
  fieldsApart: line.fieldsApart,
});
