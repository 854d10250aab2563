import type { PlainDate } from "#lib/quantity";

/** Mean length of a year of the Gregorian calendar in days. */
const daysInYear = 365.2425;
const millisecondsInDay = 86_400_000;

/** Years from one day to another, fractions allowed; below 0 where the second comes first. */
export const yearsBetween = (from: PlainDate, to: PlainDate): number =>
  (Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / millisecondsInDay / daysInYear;
