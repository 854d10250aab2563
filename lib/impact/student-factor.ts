import jStat from "jstat";

/**
 * How many standard errors to either side hold the share `chance` of Student's t distribution, both sides together.
 * @param chance above 0 and below 1: 0.95 leaves 2.5 % on either side
 * @throws RangeError outside that, or without a degree of freedom
 * @source quantile by jstat, good to about seven figures
 */
export function studentFactor(chance: number, degreesOfFreedom: number): number {
  if (!(chance > 0 && chance < 1)) throw new RangeError(`the chance must lie between 0 and 1, got ${chance}`);
  if (!(degreesOfFreedom >= 1)) throw new RangeError(`at least one degree of freedom needed, got ${degreesOfFreedom}`);
  return jStat.studentt.inv((1 + chance) / 2, degreesOfFreedom);
}
