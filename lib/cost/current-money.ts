import type { CostConventions, CostFlow } from "./model";

/**
 * A flow of constant money in the money of the conventions: current money carries general inflation from the base date
 * to the day of payment. What recurs every year is paid half a year earlier in mid-year timing, and has risen less.
 * @source derived; constant money at a real rate and current money at a nominal one are worth the same (10 CFR 436.14(a))
 */
export function inMoneyOf(flow: CostFlow, { money, inflation, timing }: CostConventions): CostFlow {
  if (money === "constant" || inflation === null) return flow;
  const earlier = flow.recurrence === "yearly" && timing === "mid-year" ? 0.5 : 0;
  const stream = flow.stream.map((cents, year) =>
    cents === 0 ? 0 : cents * (1 + inflation.value) ** (year === 0 ? 0 : year - earlier),
  );
  return { ...flow, stream };
}

/** The same conventions in constant money, for whoever looks among real rates. */
export const inConstantMoney = (conventions: CostConventions): CostConventions => ({
  ...conventions,
  money: "constant",
});
