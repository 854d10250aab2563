/** One entry in which two versions of a document differ, as text. */
export type Difference = Readonly<{ path: string; mine: string; theirs: string }>;

const asText = (value: unknown) =>
  value === undefined ? "–" : typeof value === "string" ? value : JSON.stringify(value);
const isBranch = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;

/** The leaves in which two plain documents differ, in document order. */
export function differences(mine: unknown, theirs: unknown, path = ""): readonly Difference[] {
  if (isBranch(mine) && isBranch(theirs)) {
    const keys = [...new Set([...Object.keys(mine), ...Object.keys(theirs)])];
    return keys.flatMap((key) => differences(mine[key], theirs[key], path === "" ? key : `${path} · ${key}`));
  }
  return asText(mine) === asText(theirs) ? [] : [{ path, mine: asText(mine), theirs: asText(theirs) }];
}
