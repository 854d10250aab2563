/** Refuses a rate at which money would have no later value; a schema keeps such rates out. */
function refuseRate(rate: number): void {
  if (!(rate > -1)) throw new RangeError(`a rate above −100 % is needed, got ${rate * 100} %`);
}

/**
 * Present value of 1 due at the end of `year`. `rate` per year is a fraction: 0.03 is 3 %.
 * @throws RangeError if the rate is not above −1
 * @source 10 CFR 436.16(d), single present worth
 */
export function singlePresentWorth(rate: number, year: number): number {
  refuseRate(rate);
  return (1 + rate) ** -year;
}

/**
 * Present value of 1 due at the end of each of the years 1 to `years`.
 * @throws RangeError if the rate is not above −1
 * @source 10 CFR 436.16(c), uniform present worth; at a rate of 0 it is the number of years
 */
export function uniformPresentWorth(rate: number, years: number): number {
  refuseRate(rate);
  // expm1 and log1p keep the digits that 1 − (1 + rate)^−years loses at small rates
  return rate === 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate;
}

/**
 * Present value of yearly payments that grow: the payment at the end of year t is (1 + escalation)^t.
 * @param escalation growth per year over general inflation, a fraction
 * @throws RangeError if the rate or the escalation is not above −1
 * @source derived as the sum of a geometric series; the first payment is already escalated once (NIST Handbook 135, from memory)
 */
export function escalatingUniformPresentWorth(rate: number, escalation: number, years: number): number {
  refuseRate(rate);
  refuseRate(escalation);
  if (rate === escalation) return years;
  const growth = Math.log1p((escalation - rate) / (1 + rate));
  return ((1 + escalation) * -Math.expm1(years * growth)) / (rate - escalation);
}

/**
 * The equal yearly payment, at the end of years 1 to `years`, that is worth 1 today.
 * @throws RangeError if the rate is not above −1 or there is no year to spread over
 * @source derived: the inverse of uniform present worth
 */
export function capitalRecovery(rate: number, years: number): number {
  if (!(years > 0)) throw new RangeError(`a number of years above 0 is needed, got ${years}`);
  return 1 / uniformPresentWorth(rate, years);
}

/**
 * The equal yearly payment that grows to 1 at the end of the last year.
 * @throws RangeError if the rate is not above −1 or there is no year to spread over
 * @source derived: capital recovery times single present worth
 */
export const sinkingFund = (rate: number, years: number): number =>
  capitalRecovery(rate, years) * singlePresentWorth(rate, years);
