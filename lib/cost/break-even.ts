/** Two life-cycle costs in cents at one value of an input, and how much each changes per unit of that input. */
export type LinearComparison = Readonly<{
  at: number;
  firstCost: number;
  secondCost: number;
  firstSlope: number;
  secondSlope: number;
}>;

/** Where two costs are equal: at one value of the input, at every value, or nowhere because they run parallel. */
export type BreakEven = Readonly<{ kind: "at"; value: number } | { kind: "everywhere" } | { kind: "nowhere" }>;

/**
 * The value of an input at which two life-cycle costs are equal. Exact where both costs are linear in the input: prices,
 * wages, quantities. The discount rate, an escalation and a life are not linear; this does not serve them.
 * The value may lie outside what is possible (a negative wage): then the input can't decide between the two.
 * @source derived: the crossing of two straight lines
 */
export function breakEven({ at, firstCost, secondCost, firstSlope, secondSlope }: LinearComparison): BreakEven {
  if (firstSlope === secondSlope) return { kind: firstCost === secondCost ? "everywhere" : "nowhere" };
  return { kind: "at", value: at + (secondCost - firstCost) / (firstSlope - secondSlope) };
}
