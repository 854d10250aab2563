/** The edition of a method as a report names it. `year` is null where the text shows none. */
export type Edition = Readonly<{ text: string; year: number | null }>;

const earliest = 1940;
const latest = 2099;

/** Standards bodies set the year behind the number: "F1936-19", "EN 14808:2005", "F355 – 16e1". */
const behindNumber = /(?:[-–—‑]|:)\s?(\d{4}|\d{2})(?!\d)(?!\.\d)/g;
/** A year by itself, in brackets, or at the start: "2019", "(2019)", "2015 handbook", "edition of 2019". */
const alone = /(?:^|\(|\b(?:edition|ed\.?|version|of)\s)\s?(\d{4})(?!\d)/g;

/** Reads the year of an edition: "F1936-19" → 2019, "-98" → 1998. @source ASTM form and style, year behind the hyphen, from memory */
export function readEdition(text: string): Edition {
  const written = text.trim();
  const read = written.toLowerCase();
  const years = [...read.matchAll(behindNumber), ...read.matchAll(alone)].map(([, digits = ""]) => yearOf(digits));
  return { text: written, year: years.find((year) => year >= earliest && year <= latest) ?? null };
}

/** Two digits are a year from 1940 to 2039. */
function yearOf(digits: string): number {
  const number = Number(digits);
  if (digits.length === 4) return number;
  return number >= earliest % 100 ? 1900 + number : 2000 + number;
}
