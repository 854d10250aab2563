/** One entry in which two versions of a document differ, as text. */
export type Difference = Readonly<{ path: string; mine: string; theirs: string }>;

type Branch = Readonly<Record<string, unknown>>;

const asText = (value: unknown) =>
  value === undefined ? "–" : typeof value === "string" ? value : JSON.stringify(value);
const isBranch = (value: unknown): value is Branch => typeof value === "object" && value !== null;

/** What was entered under a key: a list has a length of its own accord, which nobody entered. */
const own = (branch: Branch, key: string) =>
  Object.prototype.propertyIsEnumerable.call(branch, key) ? branch[key] : undefined;

/** A key as people read it: "valueFunction" as two words, entries of a list counted from 1. */
const keyInWords = (key: string) =>
  /^\d+$/.test(key) ? String(Number(key) + 1) : key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** A path as people read it. */
export const pathInWords = (path: string): string => path.split(".").map(keyInWords).join(" · ");

/** What stands below an entry; nothing below one that the other version has and this one lacks. Null for a leaf. */
function leavesOf(value: unknown, opposite: unknown): Branch | null {
  if (isBranch(value)) return value;
  return value === undefined && isBranch(opposite) && Object.keys(opposite).length > 0 ? {} : null;
}

/** The leaves in which two plain documents differ, in document order. */
export function differences(mine: unknown, theirs: unknown, path = ""): readonly Difference[] {
  const [one, other] = [leavesOf(mine, theirs), leavesOf(theirs, mine)];
  if (one !== null && other !== null) {
    const keys = [...new Set([...Object.keys(one), ...Object.keys(other)])];
    return keys.flatMap((key) => {
      const words = keyInWords(key);
      return differences(own(one, key), own(other, key), path === "" ? words : `${path} · ${words}`);
    });
  }
  return asText(mine) === asText(theirs) ? [] : [{ path, mine: asText(mine), theirs: asText(theirs) }];
}
