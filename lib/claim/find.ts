import { type MethodId, type StatedMethod, type TestMethod, testMethods } from "./methods";
import { nearest } from "./nearest";
import { type Property, type PropertyId, properties } from "./properties/properties";

const methodById = new Map<string, TestMethod>(testMethods.map((method) => [method.id, method]));
const propertyById = new Map<string, Property>(properties.map((property) => [property.id, property]));

/** @throws RangeError if the registry lacks the id: the compiler was bypassed */
export function methodOf(id: MethodId): TestMethod {
  const method = methodById.get(id);
  if (method === undefined) throw new RangeError(`no test method ${id}`);
  return method;
}

/** @throws RangeError if the catalogue lacks the id: the compiler was bypassed */
export function propertyOf(id: PropertyId): Property {
  const property = propertyById.get(id);
  if (property === undefined) throw new RangeError(`no property ${id}`);
  return property;
}

/** Letters and digits only: "ASTM F355, missile A" and "astm f355 Missile A" are the same to a reader. */
const plain = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");

const propertyNames = new Map(properties.flatMap(({ id, label }) => [id, label].map((name) => [plain(name), id])));
const methodNames = new Map(
  testMethods.flatMap(({ id, designation }) =>
    [id, designation, designation.replace(/^ASTM /, ""), `ASTM ${id}`].map((name) => [plain(name), id]),
  ),
);

/** The property with this id or label, whatever the case and punctuation; null where there is none. */
export const matchProperty = (text: string): PropertyId | null => propertyNames.get(plain(text)) ?? null;

/** The method with this id or designation; "not-stated" where nothing or "not stated" is written; null otherwise. */
export function matchMethod(text: string): StatedMethod | null {
  const read = plain(text);
  return read === "" || read === "notstated" ? "not-stated" : (methodNames.get(read) ?? null);
}

/** Labels that are written alike, for a message. */
export const propertiesLike = (text: string): readonly string[] =>
  nearest(
    text,
    properties.map(({ label }) => label),
  );

/** Designations that are written alike, for a message. */
export const methodsLike = (text: string): readonly string[] =>
  nearest(
    text,
    testMethods.map(({ designation }) => designation),
  );

export { inSentence } from "#lib/figure";

/**
 * The one entry that a begun text stands for: the only one that starts with it, else the only one in which every word
 * of it begins a word. Null where none or several do.
 */
function completed<Id extends string>(
  text: string,
  named: readonly Readonly<{ id: Id; names: readonly string[] }>[],
): Id | null {
  const begun = plain(text);
  if (begun === "") return null;
  const starting = named.filter(({ names }) => names.some((name) => plain(name).startsWith(begun)));
  if (starting.length === 1) return starting[0]?.id ?? null;
  const words = wordsOf(text);
  const holding = named.filter(({ names }) => names.some((name) => beginsEach(wordsOf(name), words)));
  return holding.length === 1 ? (holding[0]?.id ?? null) : null;
}

const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
const beginsEach = (words: readonly string[], begun: readonly string[]): boolean =>
  begun.every((start) => words.some((word) => word.startsWith(start)));

const propertiesByName = properties.map(({ id, label }) => ({ id, names: [label] }));
const methodsByName = testMethods.map(({ id, designation, name }) => ({
  id,
  names: [designation, designation.replace(/^(?:ASTM|EN|ISO|FIFA) /, ""), name],
}));

/** The property that a text names or begins: "tuft b" for tuft bind; null where it fits none or several. */
export const completeProperty = (text: string): PropertyId | null =>
  matchProperty(text) ?? completed(text, propertiesByName);

/** The method that a text names or begins: "F1936", "clegg"; null where it fits none or several. */
export const completeMethod = (text: string): StatedMethod | null =>
  matchMethod(text) ?? completed(text, methodsByName);
