import type { LineFlow } from "./cash-flows";
import { type CostCategory, costCategories } from "./categories";
import type { CostPart, GivenBy } from "./model";
import { type Discounting, flowPresentValue } from "./present-value";
import { shownCents } from "./shown-cents";

/** Present value of one part of a price line, in cents: as computed, and rounded as shown. */
export type CostEntry = Readonly<{
  line: string;
  label: string;
  givenBy: GivenBy;
  part: CostPart;
  category: CostCategory;
  presentValue: number;
  shown: number;
}>;

/** Present value of one category, in cents: as computed, and rounded as shown. */
export type CategoryEntry = Readonly<{
  category: CostCategory;
  label: string;
  presentValue: number;
  shown: number;
}>;

/** What each part of each line is worth at the base date. */
export function costEntries(flows: readonly LineFlow[], discounting: Discounting): readonly CostEntry[] {
  return flows.map(({ line, flow }) => {
    const presentValue = flowPresentValue(flow, discounting);
    const { id, label } = line;
    const { part, givenBy, category } = flow;
    return { line: id, label, givenBy, part, category, presentValue, shown: shownCents(presentValue) };
  });
}

/** What each category is worth, in the order of a report; a category is rounded from its unrounded sum. */
export function categoryEntries(entries: readonly CostEntry[]): readonly CategoryEntry[] {
  return (Object.keys(costCategories) as CostCategory[]).map((category) => {
    const presentValue = summedPresentValue(entries.filter((entry) => entry.category === category));
    return { category, label: costCategories[category].label, presentValue, shown: shownCents(presentValue) };
  });
}

/** The unrounded sum of entries, in cents. */
export const summedPresentValue = (entries: readonly CostEntry[]): number =>
  entries.reduce((sum, { presentValue }) => sum + presentValue, 0);
