import { explainShortfall } from "#lib/figure";
import { formatValue, measured } from "#lib/quantity";
import { naturalFrequency } from "./chance/natural-frequency";
import type { HardnessChances } from "./hardness-chances";
import type { YearFound } from "./model";
import type { ChanceOutlook, ChanceYear } from "./property/chances";

type Known = Extract<ChanceOutlook, { kind: "chances" }>;

/**
 * The chances of a bid in sentences: when they first fall below the owner's level, and what the last year looks like.
 * They are statements about fields like the bid's, not about injury.
 */
export function explainChances({ outlook }: HardnessChances, letter: string): readonly string[] {
  if (outlook.kind === "unknown") return [`No chance can be given. ${explainShortfall(outlook.because)}`];
  const last = outlook.years.at(-1);
  return [
    firstYearSentence(outlook),
    ...(last === undefined ? [] : explainChanceYear(outlook, last.year, letter)),
    ...spreadSentence(outlook),
  ];
}

/** What one year holds, for a slider: one sentence about the limit, one about the soft side where it matters. */
export function explainChanceYear(outlook: ChanceOutlook, year: number, letter: string): readonly string[] {
  if (outlook.kind === "unknown") return [];
  const found = outlook.years[year];
  return found === undefined ? [] : [limitSentence(outlook, found, letter), ...softSentence(outlook, found, letter)];
}

const premise = ({ question: { basis } }: Known): string =>
  basis.kind === "line" ? "if its own test data hold" : "if the owner's assumptions hold";

function limitSentence(outlook: Known, { year, locations, fieldMeets }: ChanceYear, letter: string): string {
  const limit = grams(outlook.question.limits.required.high);
  const [share, what] =
    locations === null
      ? [1 - fieldMeets, `be at or above ${limit} as a whole`]
      : [
          1 - locations.allMeet,
          `have at least one of ${outlook.question.locations} test locations at or above ${limit}`,
        ];
  return `${when(year)}, ${naturalFrequency(share)} fields like bid ${letter} would ${what}, ${premise(outlook)}.`;
}

/** Fewer than one location in a hundred below the window is not worth a sentence. */
const worthSaying = 0.01;

function softSentence(outlook: Known, { year, locations }: ChanceYear, letter: string): readonly string[] {
  if (locations === null || locations.locationBelowWindow < worthSaying) return [];
  return [
    `${when(year)}, ${naturalFrequency(locations.locationBelowWindow)} locations on fields like bid ${letter} would be softer than ${grams(outlook.question.limits.wished.low)}, ${premise(outlook)}.`,
  ];
}

function firstYearSentence({ question, firstYearBelowLevel: found }: Known): string {
  const limit = grams(question.limits.required.high);
  const whose =
    question.spread.kind === "unknown"
      ? `the field as a whole stays below ${limit}`
      : `all ${question.locations} test locations stay below ${limit}`;
  return `The chance that ${whose} ${reached(found, formatValue("fraction", measured("fraction", question.level), "us"))}.`;
}

function reached(found: YearFound, level: string): string {
  switch (found.kind) {
    case "known":
      return found.year === 0 ? `is below ${level} as new` : `first falls below ${level} in year ${found.year}`;
    case "not-within-horizon":
      return `stays at ${level} or more through year ${found.horizon}`;
  }
}

const spreadSentence = ({ question: { spread } }: Known): readonly string[] =>
  spread.kind === "unknown"
    ? [
        `How the level spreads over the field is not known, so single locations may well be harder. ${explainShortfall(spread.because)}`,
      ]
    : [];

const when = (year: number): string => (year === 0 ? "As new" : `In year ${year}`);
const grams = (level: number | null): string =>
  level === null ? "no limit" : formatValue("impactLevel", measured("impactLevel", level), "us");
