declare const plainDateTag: unique symbol;

/** A day of the calendar as "2026-11-25", without a time or a time zone. Sorts as text. */
export type PlainDate = string & { readonly [plainDateTag]: true };

/** Whether the text is a real day of the Gregorian calendar, written year-month-day with four, two and two digits. */
export function isPlainDate(text: string): text is PlainDate {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().slice(0, 10) === text;
}

/** Tags a date that is written in code. @throws RangeError if there is no such day */
export function plainDate(text: string): PlainDate {
  if (!isPlainDate(text)) throw new RangeError(`“${text}” is not a day of the calendar`);
  return text;
}
