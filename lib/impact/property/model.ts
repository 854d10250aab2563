import type { Shortfall } from "#lib/figure";
import type { DimensionName, In, Interval, SiUnit } from "#lib/quantity";
import type { Change } from "../chance/field-value";
import type { Reset } from "../effective-age";
import type { FieldsApart, OnField } from "../fields-apart";
import type { AgeSpan, OutlookPremise, YearOrOpen } from "../model";

/** A property after some years of use, in the SI unit of its dimension. A side that was left open is ±Infinity. */
export type AgedValue = Readonly<{ years: number; low: number; high: number }> & OnField;

/** The values of one year, in the SI unit of the property. An open side is ±Infinity. */
export type ValueSpan = Readonly<{ low: number; likely: number; high: number }>;

/** A straight line through values by age; `FittedDrift` is the same for impact levels. */
export type LineOverAge = Readonly<{
  slope: number;
  intercept: number;
  slopeError: number;
  interceptError: number;
  /** Standard deviation of values about the line; where fields are told apart, of one field about its own. */
  residualDeviation: number;
  degreesOfFreedom: number;
  /** The age at which a new result is surest, and its standard error there. */
  meanAge: number;
  errorAtMeanAge: number;
  /** Each with half the width of its range and what it adds to the line at the mean age, and a year from there. */
  points: readonly Readonly<{ years: number; halfWidth: number; atMeanAge: number; perYear: number }>[];
  fieldsApart: FieldsApart;
}>;

/** What the value of any year follows from: a line, or stated values with an assumed change. */
export type ValueBasis = Readonly<
  { kind: "line"; line: LineOverAge } | { kind: "scenario"; used: readonly AgedValue[]; change: Change }
>;

export type PropertyOutlookQuestion<D extends DimensionName> = Readonly<{
  dimension: D;
  /** What is looked at, as a noun phrase: "shock absorption". */
  what: string;
  /** Values by one method, as new (0 years) and later, in any order. */
  stated: readonly (Readonly<{ years: number; value: Interval<SiUnit<D>> }> & OnField)[];
  /** The owner's assumption of the change a year, in the SI unit of the dimension, where the values carry no line. */
  change: Change;
  /** What the property has to stay at or above, and below. Null on a side that nobody limits. */
  limits: Readonly<{ low: In<SiUnit<D>> | null; high: In<SiUnit<D>> | null }>;
  /** Chance that one new result lies in the range, both sides together. */
  chance: number;
  resets: readonly Reset[];
  /** The last year to look at, a whole number. */
  years: number;
}>;

export type PropertySpan<D extends DimensionName> = Readonly<{
  low: In<SiUnit<D>>;
  likely: In<SiUnit<D>>;
  high: In<SiUnit<D>>;
}>;

export type PropertyYear<D extends DimensionName> = PropertySpan<D> &
  Readonly<{
    year: number;
    /** Just after what is done at the end of the year; null where nothing is. */
    afterReset: PropertySpan<D> | null;
    /** The year lies outside the ages for which values are stated. */
    extrapolated: boolean;
  }>;

/** First years in which the likely value, or the near side of the range, leaves the limits. */
export type FirstYears = Readonly<{
  likelyAbove: YearOrOpen;
  possiblyAbove: YearOrOpen;
  likelyBelow: YearOrOpen;
  possiblyBelow: YearOrOpen;
}>;

export type PropertyOutlook<D extends DimensionName> = Readonly<
  | {
      kind: "outlook";
      dimension: D;
      premise: OutlookPremise;
      basis: ValueBasis;
      /** Why there is no line; null where there is one. */
      noLine: string | null;
      ages: AgeSpan;
      /** Values stated on one side only that were left out. */
      leftOut: number;
      /** Index is the year: 0 to the last one. */
      years: readonly PropertyYear<D>[];
      firstYears: FirstYears;
    }
  | { kind: "unknown"; because: Shortfall }
>;
