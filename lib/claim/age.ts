import { failed, type Result, succeeded } from "#lib/quantity";

/** How much the surface has been through. */
export type Age = Readonly<
  | { kind: "new" }
  /** Years since the field was laid, above 0. */
  | { kind: "aged"; years: number }
  /** Hours of use since the field was laid, a whole number above 0. */
  | { kind: "used"; hours: number }
  /** Cycles of simulated wear, a whole number above 0. */
  | { kind: "after-cycles"; cycles: number }
  /** Anything else, as written: "frozen". */
  | { kind: "other"; words: string }
  | { kind: "not-stated" }
>;

export type AgeProblem = Readonly<
  | { kind: "number-unclear"; read: string }
  | { kind: "years-out-of-range"; read: string }
  | { kind: "hours-out-of-range"; read: string }
  | { kind: "cycles-out-of-range"; read: string }
>;

const most = { years: 100, hours: 500_000, cycles: 10_000_000 };

const newWords = new Set(
  "new,as new,when new,new field,newly installed,initial,initially,as installed,at installation,at handover".split(","),
);
const notStatedWords = new Set(["", "not stated", "not given", "unknown", "n/a", "-", "–", "—"]);

const before = "(?:(?:at|in|after|aged|age|at age|conditioned|conditioned for) )?";
const ofUse = "(?:in use|of use|of play|of service)";
const after = `(?: (?:old|aged|${ofUse}))?`;
const digits = "(\\d[\\d.,]*)";
const yearFirst = new RegExp(`^${before}(?:year|yr)\\.? ?${digits}$`);
const yearsLast = new RegExp(`^${before}${digits}(?: |-)?(?:years?|yrs?|y)\\.?${after}$`);
const monthsLast = new RegExp(`^${before}${digits}(?: |-)?(?:months?|mo)\\.?${after}$`);
const hoursLast = new RegExp(`^(?:after |used |used for )?${digits}(?: |-)?(?:h|hrs?|hours?)\\.? ${ofUse}$`);
const cyclesLast = new RegExp(`^${before}${digits} (?:(?:wear|conditioning|simulated wear) )?cycles?(?: .*)?$`);

/** Reads "new", "year 5", "after 2,000 h of use", "after 20,000 cycles"; what it does not know it keeps as written. */
export function parseAge(words: string): Result<Age, AgeProblem> {
  const read = words.toLowerCase().replace(/\s+/g, " ");
  if (notStatedWords.has(read)) return succeeded({ kind: "not-stated" });
  if (newWords.has(read)) return succeeded({ kind: "new" });
  const years = (yearFirst.exec(read) ?? yearsLast.exec(read))?.[1];
  if (years !== undefined) return aged(words, years, 1);
  const months = monthsLast.exec(read)?.[1];
  if (months !== undefined) return aged(words, months, 12);
  const hours = hoursLast.exec(read)?.[1];
  if (hours !== undefined) return used(words, hours);
  const cycles = cyclesLast.exec(read)?.[1];
  if (cycles !== undefined) return conditioned(words, cycles);
  return succeeded({ kind: "other", words });
}

/** Years from a number of years or months; year 0 is a new field. */
function aged(read: string, number: string, perYear: 1 | 12): Result<Age, AgeProblem> {
  if (!/^\d+(\.\d+)?$/.test(number)) return failed({ kind: "number-unclear", read });
  const years = Number(number) / perYear;
  if (years > most.years) return failed({ kind: "years-out-of-range", read });
  return succeeded(years === 0 ? { kind: "new" } : { kind: "aged", years });
}

/** A whole number, with or without commas between thousands; null where the digits can't be read as one. */
const wholeNumber = (number: string): number | null =>
  /^(\d+|\d{1,3}(,\d{3})+)$/.test(number) ? Number(number.replaceAll(",", "")) : null;

function used(read: string, number: string): Result<Age, AgeProblem> {
  const hours = wholeNumber(number);
  if (hours === null) return failed({ kind: "number-unclear", read });
  if (hours > most.hours) return failed({ kind: "hours-out-of-range", read });
  return succeeded(hours === 0 ? { kind: "new" } : { kind: "used", hours });
}

function conditioned(read: string, number: string): Result<Age, AgeProblem> {
  const cycles = wholeNumber(number);
  if (cycles === null) return failed({ kind: "number-unclear", read });
  if (cycles < 1 || cycles > most.cycles) return failed({ kind: "cycles-out-of-range", read });
  return succeeded({ kind: "after-cycles", cycles });
}

const grouped = (number: number): string => number.toLocaleString("en-US");

export function explainAge(problem: AgeProblem): string {
  switch (problem.kind) {
    case "number-unclear":
      return `The number in “${problem.read}” was not understood. Expected for instance “year 5”, “18 months” or “after 20,000 cycles”.`;
    case "years-out-of-range":
      return `“${problem.read}” is longer than ${most.years} years. Expected an age that a field can reach, for instance “year 5”.`;
    case "hours-out-of-range":
      return `“${problem.read}” is more than ${grouped(most.hours)} hours. Expected a use that a field can see, for instance “after 2,000 h of use”.`;
    case "cycles-out-of-range":
      return `“${problem.read}” is not between 1 and ${grouped(most.cycles)} cycles. Expected for instance “after 20,000 cycles”.`;
  }
}

/** As people write it; `parseAge` reads it back to the same age. */
export function formatAge(age: Age): string {
  switch (age.kind) {
    case "new":
      return "new";
    case "aged":
      return inYears(age.years);
    case "used":
      return `after ${grouped(age.hours)} h of use`;
    case "after-cycles":
      return `after ${grouped(age.cycles)} cycles`;
    case "other":
      return age.words;
    case "not-stated":
      return "not stated";
  }
}

/** Whole years as "year 5", whole months as "18 months". */
function inYears(years: number): string {
  const months = Math.round(years * 12);
  return !Number.isInteger(years) && months / 12 === years ? `${months} months` : `year ${years}`;
}

/** How far an age is from a new surface, for sorting; an age not stated is taken as new here only. */
export function distanceFromNew(age: Age): number {
  switch (age.kind) {
    case "new":
    case "not-stated":
      return 0;
    case "aged":
      return age.years;
    case "used":
      return most.years + age.hours;
    case "after-cycles":
      return most.years + most.hours + age.cycles;
    case "other":
      return Number.POSITIVE_INFINITY;
  }
}
