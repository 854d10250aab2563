import type { Doer, Sealed } from "#lib/procedure";

/** What an evaluator states about conflicts of interest before scoring. A stated conflict excuses from those bids. */
export type Statement = Readonly<
  { kind: "none" } | { kind: "some-bids"; bids: readonly string[]; words: string } | { kind: "all-bids"; words: string }
>;

/** The level that an evaluator gives a bid on a criterion. The level is its id within the criterion; "" while none is chosen. */
export type Rating = Readonly<{ criterion: string; bid: string; level: string; comment: string }>;

/** What one evaluator hands in. */
export type Sheet = Readonly<{ statement: Statement; ratings: readonly Rating[] }>;

/** A sheet that was handed in: sealed until all are in and they are opened together. */
export type Scoresheet = Readonly<{
  evaluator: Doer;
  handedInAt: string;
  contents: Readonly<{ kind: "sealed"; sealed: Sealed } | { kind: "open"; sheet: Sheet }>;
}>;

/** A sheet that everybody may read. */
export type OpenSheet = Readonly<{ evaluator: Doer; handedInAt: string; sheet: Sheet }>;

/** The value that the committee agreed on for one bid on one criterion. */
export type AgreedValue = Readonly<{
  criterion: string;
  bid: string;
  /** A level of the criterion, or a value between levels, 0 to 1; null while nothing is agreed. */
  value: Readonly<{ kind: "level"; level: string } | { kind: "between"; value: number }> | null;
  reason: string;
  /** What somebody who does not agree wants to have remembered. May be empty. */
  dissent: string;
}>;

/** How the sheets were opened. The key opens what was sealed, so that anybody can check it against the record. */
export type Opening = Readonly<{ at: string; by: Doer; key: string }>;

/** What the committee did together. */
export type Committee = Readonly<{
  opened: Opening | null;
  /** Readable once opened; none before. */
  sheets: readonly OpenSheet[];
  agreed: readonly AgreedValue[];
}>;
