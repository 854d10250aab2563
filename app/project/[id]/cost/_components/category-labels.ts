import type { CostCategory } from "#lib/cost";
import type { StackedPart } from "./stacked-parts";

/** A word at the drawing and what it points to: the middle of a part, in the bar of that number. */
export type CategoryLabel = Readonly<{ category: CostCategory; bar: number; at: number }>;

/**
 * One label for each category, pointing into the first bar that has it, from left to right. Labels that stand on lines
 * of their own, the leftmost on the highest line, then cross no other label's leader.
 */
export function categoryLabels(bars: readonly (readonly StackedPart[])[]): readonly CategoryLabel[] {
  const seen = new Set<CostCategory>();
  return bars
    .flatMap((parts, bar) =>
      parts.flatMap(({ category, from, to }): readonly CategoryLabel[] => {
        if (seen.has(category)) return [];
        seen.add(category);
        return [{ category, bar, at: (from + to) / 2 }];
      }),
    )
    .toSorted((one, other) => one.at - other.at);
}
