type Branch = Readonly<Record<string, unknown>>;

const isBranch = (value: unknown): value is Branch => typeof value === "object" && value !== null;

/** Whether two plain values hold the same; what is absent is the same as undefined. */
export function sameValue(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (!isBranch(one) || !isBranch(other) || Array.isArray(one) !== Array.isArray(other)) return false;
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].every((key) => sameValue(one[key], other[key]));
}
