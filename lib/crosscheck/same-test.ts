import { type Claim, conditionsAgree, formatAge, ofAge } from "#lib/claim";

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

/** Whether both claims name the field they were measured on, and not the same one. */
export const onOtherFields = ({ testField: one }: Claim, { testField: other }: Claim): boolean =>
  one !== "" && other !== "" && plainName(one) !== plainName(other);

/** Whether two claims speak of the same age, or both of none, of one field, and of weather that does not part them. */
export const sameCondition = (one: Claim, other: Claim): boolean =>
  plainName(formatAge(one.condition.age)) === plainName(formatAge(other.condition.age)) &&
  !onOtherFields(one, other) &&
  sameWeather(one, other);

const { age: asNew } = ofAge({ kind: "new" });

/** Whether wetness, temperature and infill depth, where both claims state them, leave two figures comparable whatever their ages. */
export const sameWeather = ({ condition: one }: Claim, { condition: other }: Claim): boolean =>
  conditionsAgree({ ...one, age: asNew }, { ...other, age: asNew }).kind === "agree";
