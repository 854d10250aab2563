import type { StudyYears } from "./cost-line-kind";
import { capitalRecovery, uniformPresentWorth } from "./discount-factors";

/**
 * The equal yearly cost over the study that has the same present value. Cents in, cents a year out, not rounded.
 * @throws RangeError if the rate is not above −1 or the study has no years
 * @source derived: present value over uniform present worth
 */
export const equivalentAnnualCost = (presentValue: number, rate: number, years: number): number =>
  presentValue * capitalRecovery(rate, years);

/**
 * The equal yearly cost over the years of service alone, where the field comes into use after the base date. With no
 * delay it is the equivalent annual cost.
 * @source derived: present value over the uniform present worth of the study less that of the delay, 10 CFR 436.16(c)
 */
export const equivalentAnnualCostOfService = (
  presentValue: number,
  rate: number,
  { studyYears, serviceStart }: StudyYears,
): number =>
  serviceStart === 0
    ? equivalentAnnualCost(presentValue, rate, studyYears)
    : presentValue / (uniformPresentWorth(rate, studyYears) - uniformPresentWorth(rate, serviceStart));

/**
 * Cost of an hour of use. Cents a year and hours a year in, cents an hour out.
 * @throws RangeError if the hours are not above 0
 */
export function costPerHour(annualCost: number, hoursPerYear: number): number {
  if (!(hoursPerYear > 0)) throw new RangeError(`hours of use must be above 0 a year, got ${hoursPerYear}`);
  return annualCost / hoursPerYear;
}

/**
 * Yearly cost of a unit of area. Cents a year and m² in, cents a m² and year out.
 * @throws RangeError if the area is not above 0
 */
export function costPerAreaYear(annualCost: number, area: number): number {
  if (!(area > 0)) throw new RangeError(`the area must be above 0 m², got ${area}`);
  return annualCost / area;
}
