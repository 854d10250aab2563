import { type Change, isSame } from "#lib/together";
import { differences } from "../../../../../../_components/form/differences";

type Branch = Readonly<Record<string, unknown>>;

const isBranch = (value: unknown): value is Branch =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const keyInWords = (key: string): string => key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

const entryOf = (list: unknown, id: string): readonly [number, Branch] | null => {
  if (!Array.isArray(list)) return null;
  const at = list.findIndex((entry) => isBranch(entry) && entry.id === id);
  return at < 0 ? null : [at, list[at] as Branch];
};

/** What people call an entry of a list: its own name, else its place counted from 1. */
function entryInWords(id: string, lists: readonly unknown[]): string {
  for (const list of lists) {
    const found = entryOf(list, id);
    if (found === null) continue;
    const [at, entry] = found;
    const named = [entry.name, entry.title, entry.label, entry.item, entry.what].find(
      (words): words is string => typeof words === "string" && words !== "",
    );
    return named === undefined ? String(at + 1) : `${at + 1} (${named})`;
  }
  return id;
}

const below = (value: unknown, key: string): unknown =>
  isBranch(value) && Object.hasOwn(value, key) ? value[key] : (entryOf(value, key)?.[1] ?? undefined);

/** Where two versions differ, as people read it: “prices · 2 (Base bid) · amount”. */
export function placeInWords(path: readonly string[], versions: readonly unknown[]): string {
  const words: string[] = [];
  let at = versions;
  for (const key of path) {
    const isList = at.some(Array.isArray);
    words.push(isList && key !== "order" ? entryInWords(key, at) : keyInWords(key));
    at = at.map((value) => below(value, key));
  }
  return words.join(" · ");
}

/** One version of a place, as lines of text. */
export function valueInWords(value: unknown, other: unknown): readonly string[] {
  if (value === undefined) return ["not there"];
  if (value === "" || (Array.isArray(value) && value.length === 0)) return ["empty"];
  if (typeof value === "string") return [value];
  if (typeof value === "boolean") return [value ? "yes" : "no"];
  if (Array.isArray(value) && value.every((item) => typeof item === "string"))
    return value.map((item, index) => `${index + 1}. ${item}`);
  const lines = differences(value, isBranch(value) === isBranch(other) ? other : undefined)
    .filter(({ mine, path }) => !isSame(mine, "") && mine !== "–" && !/(?:^|· )id$/.test(path))
    .map(({ path, mine }) => (path === "" ? mine : `${path}: ${mine}`));
  return lines.length === 0 ? ["the same otherwise"] : lines;
}

/** Who changed a place. */
export const byInWords = ({ by }: Change, savedBy: string): string =>
  by === "both" ? "both" : by === "mine" ? "you" : savedBy;
