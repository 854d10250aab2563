import { singlePresentWorth } from "./discount-factors";
import type { CostFlow, CostStream, Timing } from "./model";

/**
 * Present value at the base date, in cents, not rounded, with every flow at the end of its year.
 * @param rate real, per year, a fraction (0.03 is 3 %) above −1
 * @source 10 CFR 436.16(d), single present worth; end-of-year timing is our stated convention
 */
export const presentValue = (stream: CostStream, rate: number): number =>
  stream.reduce((sum, cents, year) => (cents === 0 ? sum : sum + cents * singlePresentWorth(rate, year)), 0); // most years of a line are empty

/** What discounting needs to know besides the flows. */
export type Discounting = Readonly<{ rate: number; timing: Timing }>;

/**
 * Present value of one flow in cents, not rounded. In mid-year timing what recurs every year falls half a year earlier;
 * single payments stay at the end of their year.
 * @source derived from single present worth; stating the timing is the practice of NIST Handbook 135 (from memory)
 */
export function flowPresentValue(flow: CostFlow, { rate, timing }: Discounting): number {
  const atYearEnds = presentValue(flow.stream, rate);
  return flow.recurrence === "yearly" && timing === "mid-year" ? atYearEnds * Math.sqrt(1 + rate) : atYearEnds;
}
