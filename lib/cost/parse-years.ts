import { failed, type Result, succeeded } from "#lib/quantity";
import type { Years } from "./model";

/** What is asked for, for use in a sentence, and the fewest and most years that are read. */
export type YearsAsked = Readonly<{ what: string; low: number; high: number }>;

const pattern = /^(?:year\s*)?(\d{1,4})(?:[\s-]*(?:years?|yrs?\.?|y))?$/i;

/** "20 years", "year 10" or "8" → a whole number of years, or the sentence that helps. */
export function parseYears(asEntered: string, { what, low, high }: YearsAsked): Result<Years, string> {
  const digits = pattern.exec(asEntered.trim())?.[1];
  if (digits === undefined) {
    return failed(`“${asEntered}” was read for ${what}; expected a whole number of years, for example “10 years”.`);
  }
  const years = Number(digits);
  return years >= low && years <= high
    ? succeeded({ asEntered, years })
    : failed(`“${asEntered}” was read for ${what}; expected a whole number of years from ${low} to ${high}.`);
}

/** "10, 20" → the years, none for an empty text, or the sentence that helps. */
export function parseYearList(asEntered: string, asked: YearsAsked): Result<readonly number[], string> {
  const years: number[] = [];
  for (const part of asEntered.split(",").filter((piece) => piece.trim() !== "")) {
    const parsed = parseYears(part.trim(), asked);
    if (!parsed.ok) return parsed;
    years.push(parsed.value.years);
  }
  return succeeded(years);
}
