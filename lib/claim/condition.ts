import { failed, type Result, succeeded } from "#lib/quantity";

/** The state in which a property was measured or is promised. */
export type Condition = Readonly<
  | { kind: "new" }
  /** Years since the field was laid, above 0. */
  | { kind: "aged"; years: number }
  /** Cycles of simulated wear, a whole number above 0. */
  | { kind: "after-cycles"; cycles: number }
  /** Anything else, as written: "frozen", "wet". */
  | { kind: "other"; words: string }
  | { kind: "not-stated" }
>;

export type ConditionProblem = Readonly<
  | { kind: "too-long"; length: number }
  | { kind: "number-unclear"; read: string }
  | { kind: "years-out-of-range"; read: string }
  | { kind: "cycles-out-of-range"; read: string }
>;

const longestCondition = 200; // characters
const mostYears = 100;
const mostCycles = 10_000_000;

const newWords = new Set(
  "new,as new,when new,new field,newly installed,initial,initially,as installed,at installation,at handover".split(","),
);
const notStatedWords = new Set(["", "not stated", "not given", "unknown", "n/a", "-", "–", "—"]);

const before = "(?:(?:at|in|after|aged|age|at age|conditioned|conditioned for) )?";
const after = "(?: (?:old|aged|in use|of use|of play|of service))?";
const digits = "(\\d[\\d.,]*)";
const yearFirst = new RegExp(`^${before}(?:year|yr)\\.? ?${digits}$`);
const yearsLast = new RegExp(`^${before}${digits}(?: |-)?(?:years?|yrs?|y)\\.?${after}$`);
const monthsLast = new RegExp(`^${before}${digits}(?: |-)?(?:months?|mo)\\.?${after}$`);
const cyclesLast = new RegExp(`^${before}${digits} (?:(?:wear|conditioning|simulated wear) )?cycles?(?: .*)?$`);

/** Reads "new", "year 5", "after 20,000 cycles", "not stated"; what it does not know it keeps as written. */
export function parseCondition(text: string): Result<Condition, ConditionProblem> {
  const words = text.trim();
  if (words.length > longestCondition) return failed({ kind: "too-long", length: words.length });
  const read = words.toLowerCase().replace(/\s+/g, " ");
  if (notStatedWords.has(read)) return succeeded({ kind: "not-stated" });
  if (newWords.has(read)) return succeeded({ kind: "new" });
  const years = (yearFirst.exec(read) ?? yearsLast.exec(read))?.[1];
  if (years !== undefined) return aged(words, years, 1);
  const months = monthsLast.exec(read)?.[1];
  if (months !== undefined) return aged(words, months, 12);
  const cycles = cyclesLast.exec(read)?.[1];
  if (cycles !== undefined) return conditioned(words, cycles);
  return succeeded({ kind: "other", words });
}

/** Years from a number of years or months; year 0 is a new field. */
function aged(read: string, number: string, perYear: 1 | 12): Result<Condition, ConditionProblem> {
  if (!/^\d+(\.\d+)?$/.test(number)) return failed({ kind: "number-unclear", read });
  const years = Number(number) / perYear;
  if (years > mostYears) return failed({ kind: "years-out-of-range", read });
  return succeeded(years === 0 ? { kind: "new" } : { kind: "aged", years });
}

function conditioned(read: string, number: string): Result<Condition, ConditionProblem> {
  if (!/^(\d+|\d{1,3}(,\d{3})+)$/.test(number)) return failed({ kind: "number-unclear", read });
  const cycles = Number(number.replaceAll(",", ""));
  if (cycles < 1 || cycles > mostCycles) return failed({ kind: "cycles-out-of-range", read });
  return succeeded({ kind: "after-cycles", cycles });
}

export function explainCondition(problem: ConditionProblem): string {
  switch (problem.kind) {
    case "too-long":
      return `The condition has ${problem.length} characters; at most ${longestCondition} are read. Put the rest in the note.`;
    case "number-unclear":
      return `The number in “${problem.read}” was not understood. Expected for instance “year 5”, “18 months” or “after 20,000 cycles”.`;
    case "years-out-of-range":
      return `“${problem.read}” is longer than ${mostYears} years. Expected an age that a field can reach, for instance “year 5”.`;
    case "cycles-out-of-range":
      return `“${problem.read}” is not between 1 and 10,000,000 cycles. Expected for instance “after 20,000 cycles”.`;
  }
}

/** As people write it; `parseCondition` reads it back to the same condition. */
export function formatCondition(condition: Condition): string {
  switch (condition.kind) {
    case "new":
      return "new";
    case "aged":
      return formatAge(condition.years);
    case "after-cycles":
      return `after ${condition.cycles.toLocaleString("en-US")} cycles`;
    case "other":
      return condition.words;
    case "not-stated":
      return "not stated";
  }
}

/** Whole years as "year 5", whole months as "18 months". */
function formatAge(years: number): string {
  const months = Math.round(years * 12);
  return !Number.isInteger(years) && months / 12 === years ? `${months} months` : `year ${years}`;
}

export type ConditionAgreement = Readonly<{ kind: "agree" } | { kind: "differ"; reason: string }>;

/** Whether a figure got in one condition answers for another. A condition that is not stated answers for none. */
export function conditionsAgree(wanted: Condition, got: Condition): ConditionAgreement {
  if (wanted.kind !== "not-stated" && conditionKey(wanted) === conditionKey(got)) return { kind: "agree" };
  if (got.kind === "not-stated") {
    return {
      kind: "differ",
      reason: "The condition of the surface is not stated, and hardness and play change with age.",
    };
  }
  return {
    kind: "differ",
    reason: `A figure for “${formatCondition(got)}” says nothing certain about “${formatCondition(wanted)}”.`,
  };
}

const conditionKey = (condition: Condition): string => formatCondition(condition).toLowerCase();

/** How far a condition is from a new surface, for sorting; a condition not stated is taken as new here only. */
export function distanceFromNew(condition: Condition): number {
  switch (condition.kind) {
    case "new":
    case "not-stated":
      return 0;
    case "aged":
      return condition.years;
    case "after-cycles":
      return mostYears + condition.cycles;
    case "other":
      return Number.POSITIVE_INFINITY;
  }
}
