/** Below this share of the lower cost a difference does not decide. */
export const inconclusiveBelow = {
  share: 0.1,
  source: "US GSA P100: differences in life-cycle cost under 10 % can be judged inconclusive",
} as const;

/** How far two life-cycle costs are apart, in cents and as a share of the lower one, and whether that decides. */
export type CostDifference = Readonly<{ cents: number; share: number; verdict: "inconclusive" | "conclusive" }>;

/**
 * Compares two life-cycle costs in cents; the order does not matter.
 * Where the lower cost is not above 0 a share has no meaning: it is 0 for equal costs and Infinity for others.
 */
export function costDifference(firstCost: number, secondCost: number): CostDifference {
  const lower = Math.min(firstCost, secondCost);
  const cents = Math.abs(firstCost - secondCost);
  const share = cents === 0 ? 0 : lower > 0 ? cents / lower : Number.POSITIVE_INFINITY;
  return { cents, share, verdict: share < inconclusiveBelow.share ? "inconclusive" : "conclusive" };
}
