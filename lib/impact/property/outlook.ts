import { type DimensionName, type In, measured, type SiUnit } from "#lib/quantity";
import { effectiveYears, effectiveYearsAfterReset, type Reset } from "../effective-age";
import { firstYear } from "../first-year";
import type { AgeSpan, YearOrOpen } from "../model";
import { isClosedValue, lineOverAge, rangesOnLine } from "./line-over-age";
import type {
  AgedValue,
  FirstYears,
  PropertyOutlook,
  PropertyOutlookQuestion,
  PropertySpan,
  PropertyYear,
  ValueBasis,
  ValueSpan,
} from "./model";
import { scenarioSpan } from "./scenario-span";

/**
 * Any property by year: a line through its values with its prediction interval where they have three ages or more,
 * otherwise the owner's yearly change applied to the values there are. The premise always says which.
 * @throws RangeError if the last year is not a whole number from 0
 */
export function propertyOutlook<D extends DimensionName>(question: PropertyOutlookQuestion<D>): PropertyOutlook<D> {
  const { dimension, what, change, chance, resets, years: last } = question;
  if (!(Number.isInteger(last) && last >= 0)) throw new RangeError(`whole years from 0 expected, got ${last}`);
  const stated = question.stated.map(({ years, value: { low, high }, field, fields }): AgedValue => {
    return { years, low, high, field, fields };
  });
  if (stated.length === 0) return { kind: "unknown", because: { kind: "not-claimed", what } };
  const fit = lineOverAge(stated);
  const used = stated.some(isClosedValue) ? stated.filter(isClosedValue) : stated;
  const basis: ValueBasis =
    fit.kind === "fitted" ? { kind: "line", line: fit.line } : { kind: "scenario", used, change };
  const spans = spansOf(basis, chance, resets);
  const tagged = (span: ValueSpan) => taggedSpan(dimension, notBelowZero(span));
  const ages = agesOf(used);
  const years = Array.from({ length: last + 1 }, (_, year): PropertyYear<D> => {
    const after = spans.afterReset(year);
    const { low, likely, high } = tagged(spans.at(year));
    return {
      year,
      low,
      likely,
      high,
      afterReset: after === null ? null : tagged(after),
      extrapolated: year < ages.youngest || year > ages.oldest,
    };
  });
  return {
    kind: "outlook",
    dimension,
    basis,
    ages,
    years,
    premise: basis.kind === "line" ? "fitted-to-aged-data" : "owner-scenario",
    noLine: fit.kind === "fitted" ? null : fit.reason,
    leftOut: stated.length - used.length,
    firstYears: firstYears(years, question.limits),
  };
}

type Spans = Readonly<{ at: (year: number) => ValueSpan; afterReset: (year: number) => ValueSpan | null }>;

function spansOf(basis: ValueBasis, chance: number, resets: readonly Reset[]): Spans {
  switch (basis.kind) {
    case "line": {
      const rangeAt = rangesOnLine(basis.line, chance);
      return {
        at: (year) => rangeAt(effectiveYears(year, resets)),
        afterReset: (year) => {
          const years = effectiveYearsAfterReset(year, resets);
          return years === null ? null : rangeAt(years);
        },
      };
    }
    case "scenario": {
      const { used, change } = basis;
      return {
        at: (year) => scenarioSpan(year, used, change, (age) => effectiveYears(year, resets, age)),
        afterReset: (year) =>
          effectiveYearsAfterReset(year, resets) === null
            ? null
            : scenarioSpan(
                year,
                used,
                change,
                (age) => effectiveYearsAfterReset(year, resets, age) ?? effectiveYears(year, resets, age),
              ),
      };
    }
  }
}

/** No surface has less than nothing of a property, whatever a straight line says; an open side stays open. */
function notBelowZero({ low, likely, high }: ValueSpan): ValueSpan {
  const raised = (value: number) => (Number.isFinite(value) ? Math.max(0, value) : value);
  return { low: raised(low), likely: raised(likely), high: raised(high) };
}

const taggedSpan = <D extends DimensionName>(dimension: D, { low, likely, high }: ValueSpan): PropertySpan<D> => ({
  low: measured(dimension, low),
  likely: measured(dimension, likely),
  high: measured(dimension, high),
});

/** A limit from above has to be kept below, one from below may be touched. */
function firstYears<D extends DimensionName>(
  years: readonly PropertyYear<D>[],
  { low, high }: Readonly<{ low: In<SiUnit<D>> | null; high: In<SiUnit<D>> | null }>,
): FirstYears {
  const isOpen = (side: "low" | "high") => years.some((year) => !Number.isFinite(year[side]));
  const unless = (open: boolean, holds: (year: PropertyYear<D>) => boolean): YearOrOpen =>
    open ? { kind: "open-side" } : firstYear(years, holds);
  const isEitherOpen = isOpen("low") || isOpen("high");
  const isAbove = (value: number) => high !== null && !(value < high);
  const isBelow = (value: number) => low !== null && value < low;
  return {
    likelyAbove: unless(isEitherOpen, ({ likely }) => isAbove(likely)),
    possiblyAbove: unless(isOpen("high"), (year) => isAbove(year.high)),
    likelyBelow: unless(isEitherOpen, ({ likely }) => isBelow(likely)),
    possiblyBelow: unless(isOpen("low"), (year) => isBelow(year.low)),
  };
}

const agesOf = (values: readonly AgedValue[]): AgeSpan => {
  const ages = values.map(({ years }) => years);
  return { youngest: Math.min(...ages), oldest: Math.max(...ages) };
};
