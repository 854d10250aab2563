import { explainShortfall } from "#lib/figure";
import { type DimensionName, formatInterval, formatValue, measured } from "#lib/quantity";
import { naturalFrequency } from "../chance/natural-frequency";
import type { Sides } from "../chance/value-chances";
import type { YearFound } from "../model";
import type { ChanceOutlook, ChanceYear } from "./chances";

type Known = Extract<ChanceOutlook, { kind: "chances" }>;

/** Whose chances are told, and in which words. */
export type Told = Readonly<{
  letter: string;
  dimension: DimensionName;
  /** Below the wished window: "softer than" for hardness. */
  belowWindow: string;
  /** How all values are stated where the chances, of a limit from above, are bounds. */
  stated?: StatedOneSided | null;
}>;

/** All values stated as at most, or all as at least. */
export type StatedOneSided = "at-most" | "at-least";

export const statedInWords = { "at-most": "at most", "at-least": "at least" } as const;

/** What the share told is to the true one, where values are stated with one side only. */
function boundNote({ stated }: Told, share: "above" | "below"): string {
  if (stated === undefined || stated === null) return "";
  const isMost = (stated === "at-most") === (share === "above");
  return ` That is the ${isMost ? "most" : "least"} it can be, as its levels are stated as ${statedInWords[stated]} only.`;
}

/**
 * The chances of a bid in sentences: when they first fall below the owner's level, and what the last year looks like.
 * They are statements about fields like the bid's, not about injury.
 */
export function explainPropertyChances(outlook: ChanceOutlook, told: Told): readonly string[] {
  if (outlook.kind === "unknown") return [`No chance can be given. ${explainShortfall(outlook.because)}`];
  return [
    firstYearSentence(outlook, told),
    ...explainPropertyYear(outlook, outlook.years.length - 1, told),
    ...spreadSentence(outlook),
  ];
}

/** What one year holds: one sentence about what is required, one about the low side of the window where it matters. */
export function explainPropertyYear(outlook: ChanceOutlook, year: number, told: Told): readonly string[] {
  if (outlook.kind === "unknown") return [];
  const found = outlook.years[year];
  return found === undefined ? [] : [requiredSentence(outlook, found, told), ...windowSentence(outlook, found, told)];
}

const premise = ({ question: { basis } }: Known): string =>
  basis.kind === "line" ? "if its own test data hold" : "if the owner's assumptions hold";

function requiredSentence(outlook: Known, { year, locations, decisive }: ChanceYear, told: Told): string {
  const { limits, locations: count } = outlook.question;
  const missed = missing(limits.required, told.dimension);
  const would =
    locations === null ? `be ${missed} as a whole` : `have at least one of ${count} test locations ${missed}`;
  return `${when(year)}, ${naturalFrequency(1 - decisive)} fields like bid ${told.letter} would ${would}, ${premise(outlook)}.${boundNote(told, "above")}`;
}

/** Fewer than one location in a hundred below the window is not worth a sentence. */
const worthSaying = 0.01;

function windowSentence(outlook: Known, { year, locations }: ChanceYear, told: Told): readonly string[] {
  const { low } = outlook.question.limits.wished;
  if (low === null || locations === null || locations.locationBelowWindow < worthSaying) return [];
  return [
    `${when(year)}, ${naturalFrequency(locations.locationBelowWindow)} locations on fields like bid ${told.letter} would be ${told.belowWindow} ${inUnits(low, told.dimension)}, ${premise(outlook)}.${boundNote(told, "below")}`,
  ];
}

function firstYearSentence({ question, firstYearBelowLevel: found }: Known, { dimension }: Told): string {
  const kept = keeping(question.limits.required, dimension);
  const whose =
    question.spread.kind === "unknown"
      ? `the field as a whole stays ${kept}`
      : `all ${question.locations} test locations stay ${kept}`;
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
        `How single locations differ from the field as a whole is not known, so some may well be worse. ${explainShortfall(spread.because)}`,
      ]
    : [];

function missing({ low, high }: Sides, dimension: DimensionName): string {
  if (low === null) return high === null ? "without a limit" : `at or above ${inUnits(high, dimension)}`;
  return high === null ? `below ${inUnits(low, dimension)}` : `outside ${span(low, high, dimension)}`;
}

function keeping({ low, high }: Sides, dimension: DimensionName): string {
  if (low === null) return high === null ? "without a limit" : `below ${inUnits(high, dimension)}`;
  return high === null ? `at or above ${inUnits(low, dimension)}` : `within ${span(low, high, dimension)}`;
}

const when = (year: number): string => (year === 0 ? "As new" : `In year ${year}`);

const inUnits = (value: number, dimension: DimensionName): string =>
  formatValue(dimension, measured(dimension, value), "us");

const span = (low: number, high: number, dimension: DimensionName): string =>
  formatInterval(dimension, { low: measured(dimension, low), high: measured(dimension, high) }, "us");
