import { capitalRecovery, sinkingFund } from "../discount-factors";

/** One cycle of a part: bought, used for its life and taken out at its end. Money in cents, life in years. */
export type Cycle = Readonly<{ cost: number; disposal: number; life: number }>;

/**
 * The equal yearly cost of a part that is bought, taken out and bought again alike without end.
 * @throws RangeError if the rate is not above −1 or the life is not above 0
 * @source derived: cost × capital recovery + disposal × sinking fund
 */
export const cycleAnnualCost = ({ cost, disposal, life }: Cycle, rate: number): number =>
  cost * capitalRecovery(rate, life) + disposal * sinkingFund(rate, life);

/**
 * What has to be put aside today to pay for all cycles to come.
 * @throws RangeError if the rate is not above 0: money that earns nothing never suffices
 * @source derived: equal yearly cost ÷ rate
 */
export function capitalisedCost(cycle: Cycle, rate: number): number {
  if (!(rate > 0)) throw new RangeError(`a rate above 0 % is needed, got ${rate * 100} %`);
  return cycleAnnualCost(cycle, rate) / rate;
}

/**
 * The shortest number of years after which parts of these lives all end together.
 * @throws RangeError unless every life is a whole number of years above 0
 */
export function commonHorizon(lives: readonly number[]): number {
  if (lives.some((life) => !Number.isInteger(life) || life <= 0)) {
    throw new RangeError(`whole lives above 0 are needed, got ${lives.join(", ")}`);
  }
  return lives.reduce((common, life) => (common / greatestDivisor(common, life)) * life, 1);
}

const greatestDivisor = (one: number, other: number): number =>
  other === 0 ? one : greatestDivisor(other, one % other);
