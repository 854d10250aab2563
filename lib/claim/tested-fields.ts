import { failed, type Result, succeeded } from "#lib/quantity";

/** Which field a figure was measured on, as the bid calls it, and how many fields it stands for. */
export type TestedFields = Readonly<{
  /** Empty where no field is named. */
  testField: string;
  /** More than 1 for a mean over fields; null where nobody says. */
  fieldCount: number | null;
}>;

const mostFields = 1000;

/** Reads "4" or "4 fields", a whole number from 1; null for an empty text. */
export function parseFieldCount(text: string): Result<number | null, string> {
  const read = text.trim();
  if (read === "") return succeeded(null);
  const digits = /^(\d{1,4})(?: fields?)?$/i.exec(read)?.[1];
  const count = Number(digits);
  if (digits !== undefined && count >= 1 && count <= mostFields) return succeeded(count);
  return failed(`“${read}” was not read as a number of fields. Expected a whole number from 1 to ${mostFields}, “4”.`);
}

/** The parts that are given, in words. */
export function fieldsInWords({ testField, fieldCount }: TestedFields): readonly string[] {
  const mean = fieldCount === null || fieldCount === 1 ? "" : `mean of ${fieldCount} fields`;
  const named = testField === "" ? "" : `on field “${testField}”`;
  return [named, mean].filter((part) => part !== "");
}
