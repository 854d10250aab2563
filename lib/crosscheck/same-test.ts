import { type Claim, formatCondition } from "#lib/claim";

/** Whether two figures are from one test: the bid says so, it may be so, or it can't be. */
export type TestShared = "one report" | "perhaps one" | "apart";

/** Case and spaces decide nothing in the name of a document. */
export const plainName = (name: string): string => name.trim().toLowerCase().replace(/\s+/g, " ");

/** Two figures are from one report where method, condition and a named document are the same. */
export function testShared(one: Claim, other: Claim): TestShared {
  if (one.method !== other.method || one.method === "not-stated") return "apart";
  if (!sameCondition(one, other)) return "apart";
  const [oneDocument, otherDocument] = [plainName(one.document), plainName(other.document)];
  if (oneDocument === "" || otherDocument === "") return "perhaps one";
  return oneDocument === otherDocument ? "one report" : "apart";
}

/** Whether two claims speak of the same condition, or both of none. */
export const sameCondition = (one: Claim, other: Claim): boolean =>
  plainName(formatCondition(one.condition)) === plainName(formatCondition(other.condition));
