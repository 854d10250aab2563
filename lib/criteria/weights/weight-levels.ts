/** A heading under which criteria are weighed among themselves; its own points count beside the other headings. */
export type Heading = Readonly<{ id: string; label: string; points: number }>;

/** A criterion that scores, with the points of its own that count where weights are given directly. */
export type Weighed = Readonly<{ id: string; label: string; weight: number; heading: string }>;

/** A criterion or a heading among its neighbours. `key` tells the two apart in lists of judgements. */
export type WeightItem = Readonly<{ key: string; label: string; points: number; of: readonly WeightItem[] }>;

/** Neighbours that are weighed beside each other. `heading` is null for the top: headings, and criteria under none. */
export type WeightLevel = Readonly<{ heading: string | null; items: readonly WeightItem[] }>;

const headingMark = "heading:";

/** What a heading is called in a list of judgements; no criterion can have such an id. */
export const headingKey = (id: string): string => `${headingMark}${id}`;

const asItem = ({ id, label, weight }: Weighed): WeightItem => ({ key: id, label, points: weight, of: [] });

/** Headings that hold a criterion, in their order, then the criteria that stand under none. */
export function weightTree(criteria: readonly Weighed[], headings: readonly Heading[]): readonly WeightItem[] {
  const groups = headings.flatMap(({ id, label, points }): readonly WeightItem[] => {
    const of = criteria.filter(({ heading }) => heading === id).map(asItem);
    return of.length === 0 ? [] : [{ key: headingKey(id), label, points, of }];
  });
  const single = criteria.filter(({ heading }) => headings.every(({ id }) => id !== heading));
  return [...groups, ...single.map(asItem)];
}

/** The levels of a tree from the top down; where nothing is grouped, the one level of all criteria. */
export const weightLevels = (tree: readonly WeightItem[]): readonly WeightLevel[] => [
  { heading: null, items: tree },
  ...tree.filter(({ of }) => of.length > 0).map(({ label, of }): WeightLevel => ({ heading: label, items: of })),
];
