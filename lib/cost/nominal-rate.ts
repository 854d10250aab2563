/**
 * The rate for current money that says the same as a real rate for constant money: (1 + real)(1 + inflation) − 1.
 * Adding the two rates instead leaves out their product. All are fractions per year.
 * @source Fisher's identity, derived
 */
export const fisherNominalRate = (realRate: number, inflation: number): number =>
  realRate + inflation + realRate * inflation;

/**
 * The real rate, or the inflation, that is left when the other part is taken out of a nominal rate.
 * @throws RangeError if the part taken out is not above −1
 * @source Fisher's identity, derived
 */
export function fisherRateWithout(nominalRate: number, part: number): number {
  if (!(part > -1)) throw new RangeError(`a rate above −100 % is needed, got ${part * 100} %`);
  return (nominalRate - part) / (1 + part);
}
