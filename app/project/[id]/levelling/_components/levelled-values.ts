import { startingChecklist } from "#lib/cost";
import type { CostingText } from "#lib/evaluation";

type EntryText = NonNullable<CostingText["levelling"]>[number];

/** The text of a costing with one entry for each item in each bid, so that every cell of the matrix has fields. */
export type LevelledValues = CostingText & {
  checklist: NonNullable<CostingText["checklist"]>;
  levelling: EntryText[];
};

/** An item in a bid that nobody has asked about. */
export const blankEntry = (bid: string, item: string): EntryText => ({
  ...{ bid, item, standing: "not-asked", document: "", page: "", line: "", note: "" },
  plug: { kind: "none" },
});

const keyOf = ({ bid, item }: Pick<EntryText, "bid" | "item">) => `${bid} ${item}`;

/**
 * Fills in what a costing does not say yet. Entries on items or bids that are gone stay behind the others: they count
 * for nothing, and come back with the item.
 */
export function levelledValues(
  costing: CostingText,
  { checklist, bids }: Readonly<{ checklist: LevelledValues["checklist"]; bids: readonly string[] }>,
): LevelledValues {
  const known = new Map((costing.levelling ?? []).map((entry) => [keyOf(entry), entry]));
  const wanted = checklist.flatMap((item) => bids.map((bid) => blankEntry(bid, item.id)));
  const places = new Set(wanted.map(keyOf));
  return {
    ...costing,
    checklist: [...checklist],
    levelling: [
      ...wanted.map((blank) => {
        const entry = known.get(keyOf(blank));
        return entry === undefined ? blank : { ...blank, ...entry };
      }),
      ...(costing.levelling ?? []).filter((entry) => !places.has(keyOf(entry))),
    ],
  };
}

/** The same with the checklist that stands in the costing, or the one to start with. */
export const filledLevelling = (costing: CostingText, bids: readonly Readonly<{ id: string }>[]): LevelledValues =>
  levelledValues(costing, {
    checklist: [...(costing.checklist ?? startingChecklist)],
    bids: bids.map(({ id }) => id),
  });
