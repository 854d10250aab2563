import type { Shortfall } from "#lib/figure";
import type { In } from "#lib/quantity";
import type { FieldValue } from "../chance/field-value";
import type { LocalSpread } from "../chance/local-spread";
import { type ChanceLimits, type ValueChances, valueChances } from "../chance/value-chances";
import type { DepthLaw } from "../depth-law";
import { effectiveYears, type Reset } from "../effective-age";
import { firstYear } from "../first-year";
import type { YearFound } from "../model";
import { spreadOfLevel } from "../spread/spread-of-level";
import { isClosedValue, resultOnLine } from "./line-over-age";
import type { ValueBasis } from "./model";
import { startAge } from "./scenario-span";

/** An input with the ends it may move between; all three agree where nothing is known of a range. */
export type Ranged<N extends number = number> = Readonly<{ low: N; likely: N; high: N }>;

/** What makes single locations differ from the value of the field. */
export type SpreadBasis = Readonly<
  | { kind: "depth"; perDepth: Ranged<In<"1/m">>; deviation: Ranged<In<"m">>; law: DepthLaw }
  | { kind: "share"; deviation: Ranged; law: DepthLaw }
  /** Standard deviation in the unit of the property, for properties to which no law of depth belongs. */
  | { kind: "amount"; deviation: Ranged }
  | { kind: "unknown"; because: Shortfall }
>;

/** All that the chances of every year follow from, as plain data. */
export type ChanceQuestion = Readonly<{
  basis: ValueBasis;
  resets: readonly Reset[];
  limits: ChanceLimits;
  spread: SpreadBasis;
  /** Test locations on one field. */
  locations: number;
  /** The owner's level: the chance that has to be reached in every year. */
  level: number;
  /** The last year to look at, a whole number. */
  years: number;
}>;

export type ChanceYear = Readonly<{
  year: number;
  /** Chances over the field; null where no spread can be given. */
  locations: ValueChances | null;
  /** The chance that is held against the owner's level: of all locations, or of the field where those are not known. */
  decisive: number;
}>;

export type ChanceOutlook = Readonly<
  | {
      kind: "chances";
      question: ChanceQuestion;
      /** Index is the year: 0 to the last one. */
      years: readonly ChanceYear[];
      firstYearBelowLevel: YearFound;
    }
  | { kind: "unknown"; because: Shortfall }
>;

/** Chances by year, and the first year in which the decisive one falls below the owner's level. */
export function chanceOutlook(question: ChanceQuestion): ChanceOutlook {
  const { basis, years: last, level } = question;
  if (!isKnown(basis)) {
    return { kind: "unknown", because: { kind: "missing-input", what: "a value with both sides stated" } };
  }
  const years = Array.from({ length: last + 1 }, (_, year) => chancesOf(question, year));
  return {
    kind: "chances",
    ...{ question, years },
    firstYearBelowLevel: firstYear(years, ({ decisive }) => decisive < level),
  };
}

/** Whether every value that the chances start from has both sides. */
export const isKnown = (basis: ValueBasis): boolean => basis.kind === "line" || basis.used.every(isClosedValue);

/** The first year below the owner's level without the chances of later ones; the values have to be closed. */
export function firstYearBelow(question: ChanceQuestion): YearFound {
  for (let year = 0; year <= question.years; year += 1) {
    if (chancesOf(question, year).decisive < question.level) return { kind: "known", year };
  }
  return { kind: "not-within-horizon", horizon: question.years };
}

/** The chances of one year. */
export function chancesOf({ basis, resets, limits, spread, locations }: ChanceQuestion, year: number): ChanceYear {
  const value = fieldValueIn(year, basis, resets);
  const local = localSpread(spread);
  const chances = valueChances(value, limits, local ?? { kind: "none" }, locations);
  return local === null
    ? { year, locations: null, decisive: chances.fieldMeets }
    : { year, locations: chances, decisive: chances.allMeet };
}

/** The value of a field in one year with how sure it is, what resets take back taken off. */
function fieldValueIn(year: number, basis: ValueBasis, resets: readonly Reset[]): FieldValue {
  switch (basis.kind) {
    case "line": {
      const { degreesOfFreedom } = basis.line;
      const result = resultOnLine(basis.line, effectiveYears(year, resets));
      return { kind: "line", scale: "amount", ...result, degreesOfFreedom };
    }
    case "scenario": {
      const { used, change } = basis;
      const from = startAge(year, used);
      const starts = used.filter(({ years }) => years === from);
      return { kind: "scenario", starts, elapsed: effectiveYears(year, resets, from), change };
    }
  }
}

/** How locations spread at the likely inputs; null where nothing can be said. */
function localSpread(spread: SpreadBasis): LocalSpread | null {
  switch (spread.kind) {
    case "depth":
      return spreadOfLevel(spread.perDepth.likely, spread.deviation.likely, spread.law);
    case "share":
      return { kind: "share", law: spread.law, deviation: spread.deviation.likely };
    case "amount":
      return { kind: "amount", deviation: spread.deviation.likely };
    case "unknown":
      return null;
  }
}
