/** A plain object as JSON has it. */
export type Branch = Readonly<Record<string, unknown>>;

export const isBranch = (value: unknown): value is Branch =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** What an object itself holds under a key. */
export const own = (branch: Branch, key: string): unknown => (Object.hasOwn(branch, key) ? branch[key] : undefined);

/** A form fills in fields that a stored text lacks, so nothing, an empty text and an empty list say the same. */
function isNothing(value: unknown): boolean {
  if (value === undefined || value === "") return true;
  if (Array.isArray(value)) return value.length === 0;
  return isBranch(value) && Object.values(value).every(isNothing);
}

/** Whether two texts of JSON say the same. */
export function isSame(one: unknown, other: unknown): boolean {
  if (Object.is(one, other) || (isNothing(one) && isNothing(other))) return true;
  if (Array.isArray(one) && Array.isArray(other))
    return one.length === other.length && one.every((entry, index) => isSame(entry, other[index]));
  if (!isBranch(one) || !isBranch(other)) return false;
  return [...new Set([...Object.keys(one), ...Object.keys(other)])].every((key) =>
    isSame(own(one, key), own(other, key)),
  );
}

/** Two objects of different kinds have different fields: one stands whole or the other. */
export const areOfOneKind = (...branches: readonly Branch[]): boolean =>
  new Set(branches.map((branch) => own(branch, "kind"))).size === 1;
