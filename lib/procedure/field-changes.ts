import type { FieldChange } from "./model";
import { sameValue } from "./same-value";

type Branch = Readonly<Record<string, unknown>>;

const isBranch = (value: unknown): value is Branch =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const isNamed = (value: unknown): value is Branch & Readonly<{ id: string }> =>
  isBranch(value) && typeof value.id === "string";

/** How an entry of a list is called: by its own words where it has some. */
const nameOf = (entry: Branch): string => {
  const words = [entry.label, entry.name, entry.id].find((text) => typeof text === "string" && text.trim() !== "");
  return `“${words ?? ""}”`;
};

/** "valueFunction" as two words. */
const keyInWords = (key: string): string => key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

const nothing = "–";
const asText = (value: unknown): string => {
  if (value === undefined || value === null || value === "") return nothing;
  return typeof value === "string" ? value : JSON.stringify(value);
};

/**
 * The entries in which a document differs from how it stood, in its order, with the text of both. Entries of a list that
 * have an id are matched by it, so that a new one does not make all after it differ.
 */
export function fieldChanges(from: unknown, to: unknown, path: readonly string[] = []): readonly FieldChange[] {
  if (sameValue(from, to)) return [];
  if (Array.isArray(from) && Array.isArray(to)) return listChanges(from, to, path);
  if (isBranch(from) && isBranch(to)) {
    const keys = [...new Set([...Object.keys(from), ...Object.keys(to)])].filter((key) => key !== "id");
    return keys.flatMap((key) => fieldChanges(from[key], to[key], [...path, keyInWords(key)]));
  }
  const [was, is] = [asText(from), asText(to)];
  return was === is ? [] : [{ field: path.join(", "), from: was, to: is }]; // left empty in two ways
}

function listChanges(
  from: readonly unknown[],
  to: readonly unknown[],
  path: readonly string[],
): readonly FieldChange[] {
  if (![...from, ...to].every(isNamed)) {
    const length = Math.max(from.length, to.length);
    return Array.from({ length }, (_, at) => fieldChanges(from[at], to[at], [...path, String(at + 1)])).flat();
  }
  const [were, are] = [from.filter(isNamed), to.filter(isNamed)];
  const gone = were.filter(({ id }) => are.every((entry) => entry.id !== id));
  const kept = were.filter((entry) => !gone.includes(entry));
  const order = are.filter(({ id }) => kept.some((entry) => entry.id === id));
  const moved = kept.some(({ id }, at) => order[at]?.id !== id);
  return [
    ...are.flatMap((entry) => {
      const before = were.find(({ id }) => id === entry.id);
      const place = [...path, nameOf(before ?? entry)];
      return before === undefined
        ? [{ field: place.join(", "), from: nothing, to: `added: ${summaryOf(entry)}` }]
        : fieldChanges(before, entry, place);
    }),
    ...gone.map((entry) => ({
      field: [...path, nameOf(entry)].join(", "),
      from: summaryOf(entry),
      to: "taken out",
    })),
    ...(moved
      ? [{ field: [...path, "order"].join(", "), from: kept.map(nameOf).join(", "), to: order.map(nameOf).join(", ") }]
      : []),
  ];
}

/** An entry that came or went as a whole, in its leaves. */
const summaryOf = (entry: Branch): string =>
  fieldChanges({}, entry)
    .map(({ field, to }) => `${field} ${to}`)
    .join("; ");
