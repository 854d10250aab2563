import { type CostCategory, costCategories } from "./categories";
import type { CategoryEntry } from "./cost-entries";

/** What one category adds to a cost or takes off it on the way from one bid to another. Cents, not rounded. */
export type BridgeStep = Readonly<{ category: CostCategory; label: string; from: number; to: number; change: number }>;

/** The way from the present value of one bid to that of another. Cents, not rounded. */
export type CostBridge = Readonly<{ start: number; steps: readonly BridgeStep[]; end: number }>;

/** Changes in cents below this are the last bits of binary arithmetic. */
const negligible = 1e-4;

/**
 * What makes the difference between two bids, category by category in the order of a report; categories that make none
 * are left out. The steps add up to the whole difference.
 */
export function costBridge(first: readonly CategoryEntry[], second: readonly CategoryEntry[]): CostBridge {
  const worth = (entries: readonly CategoryEntry[], wanted: CostCategory) =>
    entries.find(({ category }) => category === wanted)?.presentValue ?? 0;
  const total = (entries: readonly CategoryEntry[]) => entries.reduce((sum, { presentValue }) => sum + presentValue, 0);
  const start = total(first);
  let at = start;
  const steps = (Object.keys(costCategories) as CostCategory[]).flatMap((category): readonly BridgeStep[] => {
    const change = worth(second, category) - worth(first, category);
    if (Math.abs(change) < negligible) return [];
    const from = at;
    at += change;
    return [{ category, label: costCategories[category].label, from, to: at, change }];
  });
  return { start, steps, end: total(second) };
}
