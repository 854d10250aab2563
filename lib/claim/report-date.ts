import { failed, isPlainDate, type PlainDate, plainDate, type Result, succeeded } from "#lib/quantity";

/** The date of a test report as written; it may name a day, a month or no more than a year. */
export type ReportDate = Readonly<{ text: string; earliest: PlainDate; latest: PlainDate }>;

export type ReportDateProblem = Readonly<
  | { kind: "not-a-date"; read: string }
  | { kind: "no-such-day"; read: string }
  /** Numbers alone: the calendar days that they can stand for, none, one or two. */
  | { kind: "order-unclear"; read: string; readings: readonly PlainDate[] }
>;

const longestDate = 40; // characters
const firstYear = 1950;
const lastYear = 2100;

const monthNames = "january,february,march,april,may,june,july,august,september,october,november,december".split(",");
const month = `(${[...monthNames, ...monthNames.map((name) => name.slice(0, 3)), "sept"].join("|")})\\.?`;
const year = "(\\d{4})";
const day = "(\\d{1,2})(?:st|nd|rd|th)?";

const yearFirst = /^(\d{4})(?:[-/](\d{1,2})(?:[-/](\d{1,2}))?)?$/;
const monthFirst = new RegExp(`^${month} (?:${day},? )?${year}$`);
const dayFirst = new RegExp(`^${day}[ -]${month},?[ -]${year}$`);
const numbersAlone = /^(\d{1,2})([/.-])(\d{1,2})\2(\d{4}|\d{2})$/;

/**
 * Reads "2024-05-03", "2024-05", "2024", "May 2024", "May 3, 2024", "3 May 2024"; an empty text is no date.
 * Day and month as numbers in an order that nobody can tell are not guessed at.
 */
export function parseReportDate(text: string): Result<ReportDate | null, ReportDateProblem> {
  const written = text.trim();
  if (written === "") return succeeded(null);
  const read = written.toLowerCase().replace(/\s+/g, " ");
  if (written.length > longestDate) return failed({ kind: "not-a-date", read: written.slice(0, longestDate) });
  const alone = numbersAlone.exec(read);
  if (alone !== null) return failed({ kind: "order-unclear", read: written, readings: readingsOf(alone) });
  const parts = partsOf(read);
  if (parts === null) return failed({ kind: "not-a-date", read: written });
  const span = spanOf(parts);
  return span === null ? failed({ kind: "no-such-day", read: written }) : succeeded({ text: written, ...span });
}

type Parts = Readonly<{ year: number; month: number | null; day: number | null }>;

function partsOf(read: string): Parts | null {
  const number = (digits: string | undefined) => (digits === undefined ? null : Number(digits));
  const iso = yearFirst.exec(read);
  if (iso !== null) return { year: Number(iso[1]), month: number(iso[2]), day: number(iso[3]) };
  const named = monthFirst.exec(read);
  if (named !== null) return { year: Number(named[3]), month: monthNumber(named[1]), day: number(named[2]) };
  const turned = dayFirst.exec(read);
  if (turned !== null) return { year: Number(turned[3]), month: monthNumber(turned[2]), day: number(turned[1]) };
  return null;
}

const monthNumber = (name = ""): number => monthNames.findIndex((full) => full.startsWith(name.slice(0, 3))) + 1;

/** The first and the last day that the parts leave open; null where the calendar has no such day. */
function spanOf({ year: inYear, month: inMonth, day: onDay }: Parts): Omit<ReportDate, "text"> | null {
  if (inYear < firstYear || inYear > lastYear) return null;
  const [from, to] = inMonth === null ? [1, 12] : [inMonth, inMonth];
  const earliest = dayText(inYear, from, onDay ?? 1);
  const latest = dayText(inYear, to, onDay ?? lastDayOf(inYear, to));
  return isPlainDate(earliest) && isPlainDate(latest) ? { earliest, latest } : null;
}

const padded = (value: number, digits: number): string => String(value).padStart(digits, "0");
const dayText = (inYear: number, inMonth: number, onDay: number): string =>
  `${padded(inYear, 4)}-${padded(inMonth, 2)}-${padded(onDay, 2)}`;

/** 31, 30, 29 or 28: the highest day number that the calendar has in a month. */
const lastDayOf = (inYear: number, inMonth: number): number =>
  [31, 30, 29, 28].find((last) => isPlainDate(dayText(inYear, inMonth, last))) ?? 0;

/** "03/05/2024" as month and day, then as day and month, as far as the calendar has such a day. */
function readingsOf(match: RegExpExecArray): readonly PlainDate[] {
  const [one, other, written] = [Number(match[1]), Number(match[3]), match[4] ?? ""];
  const inYear = Number(written.length === 2 ? `20${written}` : written);
  const days = [dayText(inYear, one, other), dayText(inYear, other, one)].filter(isPlainDate);
  return [...new Set(days)];
}

const longDay = new Intl.DateTimeFormat("en-US", { dateStyle: "long", timeZone: "UTC" });
const inWords = (date: PlainDate): string => longDay.format(new Date(`${date}T00:00:00Z`));

export function explainReportDate(problem: ReportDateProblem): string {
  const example = plainDate("2024-05-03");
  switch (problem.kind) {
    case "not-a-date":
      return `“${problem.read}” was not read as a date. Expected for instance ${example}, “${inWords(example)}”, “May 2024” or 2024.`;
    case "no-such-day":
      return `“${problem.read}” is not in the calendar between ${firstYear} and ${lastYear}. Expected for instance ${example}, “May 2024” or 2024.`;
    case "order-unclear": {
      const [first, second] = problem.readings;
      if (first === undefined)
        return `“${problem.read}” is not a day of the calendar in either order. Expected for instance ${example}.`;
      const readings =
        second === undefined
          ? `was read as ${inWords(first)}`
          : `can be read as ${inWords(first)} or as ${inWords(second)}`;
      return `“${problem.read}” ${readings}, and numbers alone don’t show which is the month. Write the month as a word, or the year first: ${[first, ...(second === undefined ? [] : [second])].join(" or ")}.`;
    }
  }
}
