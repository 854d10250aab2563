import { isBranch, own } from "./same";

/** Entries of a list by their ids, in the order of the list. */
export type Entries = ReadonlyMap<string, unknown>;

/** The entries of a list by id; null where an entry has none, where two have the same, and where it is no list. */
export function entriesOf(value: unknown): Entries | null {
  if (value === undefined) return new Map();
  if (!Array.isArray(value)) return null;
  const entries = new Map<string, unknown>();
  for (const entry of value) {
    const id = isBranch(entry) ? own(entry, "id") : undefined;
    if (typeof id !== "string" || id === "" || entries.has(id)) return null;
    entries.set(id, entry);
  }
  return entries;
}

/** Ids in one order, with those that only the other order has put after what they follow there. */
export function inOrder(first: readonly string[], other: readonly string[]): readonly string[] {
  const order = [...first];
  let follows = -1;
  for (const id of other) {
    const at = order.indexOf(id);
    if (at >= 0) follows = at;
    else {
      follows += 1;
      order.splice(follows, 0, id);
    }
  }
  return order;
}
