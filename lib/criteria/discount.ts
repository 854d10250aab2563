import type { Criterion } from "./model";
import { valueBounds } from "./value-functions";

type Discounting = Pick<Criterion, "valueFunction" | "evidence">;

/** The least value that the owner's line has at all. */
const worstOf = ({ valueFunction }: Discounting): number =>
  valueFunction.kind === "none"
    ? 0
    : valueBounds(valueFunction, { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY }).low;

/** What a less proven figure's value counts for: the discount is taken off what it has above the worst, so it never gets worse than that. */
export function discountedValue(criterion: Discounting, value: number): number {
  const worst = worstOf(criterion);
  return worst + (1 - criterion.evidence.discount) * (value - worst);
}

/** The other way round: the value before the discount. */
export function undiscountedValue(criterion: Discounting, value: number): number {
  const worst = worstOf(criterion);
  return worst + (value - worst) / (1 - criterion.evidence.discount);
}
