import type { Figure, Origin, Shortfall } from "#lib/figure";
import type { ExactQuantity, In, Interval } from "#lib/quantity";
import type { DepthLaw } from "./depth-law";
import type { FieldsApart, OnField } from "./fields-apart";
import type { Grooming } from "./spread/grooming";
import type { InstalledSpread } from "./spread/installed-spread";

/** What the owner asks of impact attenuation and how far ahead to look. Every figure belongs to one method; none converts to another. */
export type ImpactRequirement = Readonly<{
  /** Id of the test method, "f355-a" for the flat 9.1 kg missile dropped from 610 mm. */
  method: string;
  /** The levels the owner likes best: below is too soft, above is harder than wished but may still meet the limit. */
  targetWindow: Readonly<{ low: ExactQuantity<"impactLevel">; high: ExactQuantity<"impactLevel"> }>;
  /** Every location has to stay below it. */
  limit: ExactQuantity<"impactLevel">;
  /** Where the limit comes from: a standard and its edition, a guideline, the owner's contract. */
  limitSource: string;
  /** Locations to test on one field. Editions and testers differ (8 or 10), so the owner states it. */
  testLocations: number;
  /** Whole years to look ahead, the expected life of the carpet for instance. */
  horizonYears: number;
  /** The owner's assumption of the yearly change, used where a bid's own levels can't carry a line. */
  ownersDrift: Readonly<{
    low: ExactQuantity<"rateOfChange">;
    likely: ExactQuantity<"rateOfChange">;
    high: ExactQuantity<"rateOfChange">;
  }>;
  /**
   * Chance that one single test result lies inside the stated range, both sides together. How sure the limit is to be
   * kept is another matter: `wantedChance`.
   */
  chanceLevel: ExactQuantity<"fraction">;
  depthSensitivity: DepthSensitivityChoice;
  /** What the owner sets for chances and the years to come; what is left out is taken from `outlookChoices`. */
  outlook?: OwnersOutlook | undefined;
}>;

/** The owner's choices for the outlook. Every one may be left out. */
export type OwnersOutlook = Readonly<{
  spread?: SpreadChoice | undefined;
  /** The chance that all locations keep the limit which the owner wants in every year. */
  wantedChance?: ExactQuantity<"fraction"> | undefined;
  /** What the spread over an installed field comes from. */
  installedSpread?: InstalledSpread | undefined;
  /** How the level answers to lost depth. */
  law?: DepthLaw | undefined;
  /** How much less a spot over a shock layer answers to lost depth. */
  shockLayer?: ShockLayerChoice | undefined;
  /** Top-ups and groomings that take back part of the change. */
  resets?: readonly PlannedReset[] | undefined;
}>;

export type ShockLayerChoice = Readonly<
  { kind: "as-soft-as-the-infill" } | { kind: "owners-value"; factor: ExactQuantity<"fraction">; reason: string }
>;

/** How the level differs from spot to spot over one field. */
export type SpreadChoice = Readonly<
  | { kind: "by-class"; grooming: Grooming }
  | { kind: "depth-deviation"; deviation: ExactQuantity<"length">; reason: string }
  /** As a share of the level itself, where no law of depth holds. */
  | { kind: "level-deviation"; share: ExactQuantity<"fraction">; reason: string }
>;

export type PlannedReset = Readonly<{
  /** Done at the end of this year of use, a whole number from 1. */
  year: number;
  /** Share of the change so far that it takes back. */
  undone: ExactQuantity<"fraction">;
  /** The name of the price line that pays for it, the same in every bid; empty where it is not priced. */
  priceLine: string;
  /** What it is, in the owner's words; may be empty. */
  note: string;
}>;

/** Which figure says how much harder a spot gets as infill leaves it. */
export type DepthSensitivityChoice = Readonly<
  { kind: "common-practice" } | { kind: "owners-value"; perDepth: ExactQuantity<"depthSensitivity">; reason: string }
>;

/** A level the bid gives by the required method, and where it stands. One-sided statements have an infinite side. */
export type StatedLevel = Readonly<{ level: Interval<"g">; from: Origin }> & OnField;

/** A stated level of a surface in use for some years, fractions allowed. */
export type AgedLevel = StatedLevel & Readonly<{ years: number }>;

/** The first year in which something holds, or that it does not up to the horizon. */
export type YearFound = Readonly<{ kind: "known"; year: number } | { kind: "not-within-horizon"; horizon: number }>;

/** A first year, or that none can be told because what is stated leaves that side open ("at most", "at least"). */
export type YearOrOpen = YearFound | Readonly<{ kind: "open-side" }>;

/** A level with its age; all that the line needs. */
export type PointInTime = Readonly<{ years: number; level: Interval<"g"> }> & OnField;

/** A straight line through levels by age, with what is needed to say how sure it is. */
export type FittedDrift = Readonly<{
  kind: "fitted";
  slope: In<"g/year">;
  intercept: In<"g">;
  slopeError: In<"g/year">;
  interceptError: In<"g">;
  /** Standard deviation of the levels about the line; where fields are told apart, of one field about its own. */
  residualDeviation: In<"g">;
  degreesOfFreedom: number;
  /** The age at which a new test result is surest, and its standard error there. */
  meanAge: number;
  errorAtMeanAge: In<"g">;
  /**
   * The ages that carry the line, with half the width of each stated level and what the level adds to the line at the
   * mean age, and a year from there.
   */
  points: readonly Readonly<{ years: number; halfWidth: In<"g">; atMeanAge: number; perYear: number }>[];
  /** Whether fields were told apart; spreads in g. */
  fieldsApart: FieldsApart;
}>;

export type Drift = FittedDrift | Readonly<{ kind: "not-enough-points"; distinctAges: number; reason: string }>;

/** What a level rests on: the bid's own aged data, or the owner's assumption of a yearly change. */
export type OutlookPremise = "fitted-to-aged-data" | "owner-scenario";

/** Ages in years. */
export type AgeSpan = Readonly<{ youngest: number; oldest: number }>;

/** The levels of one year, without words. An open side is ±Infinity. */
export type LevelSpan = Readonly<{ low: In<"g">; likely: In<"g">; high: In<"g"> }>;

export type OutlookYear = LevelSpan &
  Readonly<{
    year: number;
    /** The level just after what is done at the end of the year; null where nothing is. */
    afterReset: LevelSpan | null;
    /** The year lies outside the ages for which the bid gives levels. */
    extrapolated: boolean;
    /** The same range with its working. */
    level: Figure<"impactLevel">;
  }>;

export type HardnessOutlook = Readonly<
  | {
      kind: "outlook";
      premise: OutlookPremise;
      /** The line behind it, or why the bid's levels can't carry one. */
      drift: Drift;
      limit: In<"g">;
      /** Lower end of the target window. */
      softest: In<"g">;
      /** Youngest and oldest age for which the bid gives a level that is used. */
      ages: AgeSpan;
      /** Index is the year: 0 to the horizon. */
      years: readonly OutlookYear[];
      /** The first year in which the likely level is at or above the limit. */
      firstYearLikelyAbove: YearOrOpen;
      /** The first year in which the hard side of the range is at or above the limit. */
      firstYearPossiblyAbove: YearOrOpen;
      /** The first year in which the likely level is below the target window. */
      firstYearLikelyTooSoft: YearOrOpen;
      firstYearPossiblyTooSoft: YearOrOpen;
    }
  | { kind: "unknown"; because: Shortfall }
>;

export type OutlookQuestion = Readonly<{
  /** The level as new by the required method; null where the bid gives none. */
  newLevel: StatedLevel | null;
  /** Levels after years of use by the same method, in any order. */
  agedPoints: readonly AgedLevel[];
  requirement: Pick<ImpactRequirement, "limit" | "targetWindow" | "ownersDrift" | "chanceLevel" | "outlook">;
  /** The last year to look at, a whole number. */
  years: number;
}>;
