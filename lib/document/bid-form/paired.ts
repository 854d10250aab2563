/** An entry that stands now, one that is said now, or both where they are the same thing. */
export type Pair<T> = Readonly<
  { kind: "both"; before: T; after: T } | { kind: "standing"; before: T } | { kind: "said"; after: T }
>;

/**
 * Pairs what stands with what is said. The first name by which two entries agree pairs them, tried from the most
 * telling to the least; what is left on either side stands alone. Order: as it stands, then what is new as it is said.
 */
export function paired<T>(
  before: readonly T[],
  after: readonly T[],
  names: readonly ((entry: T) => string)[],
): readonly Pair<T>[] {
  const partner = new Map<number, number>();
  const taken = new Set<number>();
  for (const name of names) {
    const waiting = new Map<string, number[]>();
    for (const [index, entry] of after.entries())
      if (!taken.has(index)) waiting.set(name(entry), [...(waiting.get(name(entry)) ?? []), index]);
    for (const [index, entry] of before.entries()) {
      if (partner.has(index)) continue;
      const found = waiting.get(name(entry))?.shift();
      if (found === undefined) continue;
      partner.set(index, found);
      taken.add(found);
    }
  }
  const standing = before.map((entry, index): Pair<T> => {
    const found = partner.get(index);
    const said = found === undefined ? undefined : after[found];
    return said === undefined ? { kind: "standing", before: entry } : { kind: "both", before: entry, after: said };
  });
  const added = after.flatMap((entry, index): readonly Pair<T>[] =>
    taken.has(index) ? [] : [{ kind: "said", after: entry }],
  );
  return [...standing, ...added];
}
