import { type CostCategory, type CostEntry, costCategories } from "#lib/cost";

/** One category of a stacked bar: where it lies along the scale and how much of it the owner estimated. Cents. */
export type StackedPart = Readonly<{
  category: CostCategory;
  from: number;
  to: number;
  /** The end of the part that rests on the owner's estimates; `from` and `to` are the same where none does. */
  estimated: Readonly<{ from: number; to: number }>;
}>;

/**
 * Categories of cost laid end to end: costs to the right of zero, credits to the left, in the order of a report. Within
 * a category what the bid gives lies next to zero and what the owner estimates lies behind it.
 */
export function stackedParts(entries: readonly CostEntry[]): readonly StackedPart[] {
  let [costs, credits] = [0, 0];
  return (Object.keys(costCategories) as CostCategory[]).flatMap((category): readonly StackedPart[] => {
    const inCategory = entries.filter((entry) => entry.category === category);
    const cents = summed(inCategory);
    if (cents === 0) return [];
    const estimatedCents = summed(inCategory.filter(({ givenBy }) => givenBy === "owner-estimate"));
    const from = cents > 0 ? costs : credits;
    const to = from + cents;
    if (cents > 0) costs = to;
    else credits = to;
    return [{ category, from, to, estimated: { from: to - within(estimatedCents, cents), to } }];
  });
}

const summed = (entries: readonly CostEntry[]) => entries.reduce((sum, { presentValue }) => sum + presentValue, 0);

/** The share of a category that can be drawn in it, where costs and credits of different givers offset each other. */
const within = (part: number, whole: number) =>
  whole > 0 ? Math.min(Math.max(part, 0), whole) : Math.max(Math.min(part, 0), whole);
