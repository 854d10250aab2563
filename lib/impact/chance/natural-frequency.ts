/**
 * A chance as a natural frequency: "3 in 10", "4 in 100", "fewer than 1 in 100". Tenths between a tenth and nine
 * tenths, hundredths outside; never none or all, which only a chance of exactly 0 or 1 would allow and no chance
 * worked out from few results is.
 */
export function naturalFrequency(chance: number): string {
  if (!(chance >= 0 && chance <= 1)) throw new RangeError(`a chance lies between 0 and 1, got ${chance}`);
  if (chance < 0.01) return "fewer than 1 in 100";
  if (chance > 0.99) return "more than 99 in 100";
  const hundredths = Math.round(chance * 100);
  if (hundredths < 10 || hundredths > 90) return `${hundredths} in 100`;
  return `${Math.round(chance * 10)} in 10`;
}
