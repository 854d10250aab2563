import type { Severity } from "#lib/crosscheck";
import type { Working } from "#lib/figure";
import type { StatusWord } from "../../../../_components/status";

/** A finding where it belongs, in the reader's words. */
export type Mark = Readonly<{ severity: Severity; title: string; sentence: string; question: string }>;

/** One thing to know about a statement: how it was entered, what shows it, where it is written. */
export type Fact = Readonly<{ label: string; text: string }>;

/** One thing a bid says, in the reader's units. */
export type Statement = Readonly<{
  id: string;
  text: string;
  /** What tells it from the bid's other statements on this line: "new", "year 5", "Silica sand". Empty for nothing. */
  qualifier: string;
  /** How well it is shown, in a word or two. */
  evidence: string;
  facts: readonly Fact[];
  marks: readonly Mark[];
}>;

/** What stands where a row and a bid meet. */
export type Cell = Readonly<{
  bid: string;
  /** The whole cell on one line, to compare and to copy. Empty where the bid says nothing. */
  text: string;
  status: StatusWord | null;
  /** How a derived figure comes about; null where nothing is worked out. */
  working: Working | null;
  statements: readonly Statement[];
  /** Sentences that explain the status. */
  lines: readonly string[];
  marks: readonly Mark[];
}>;

/** One property or figure across all bids, one cell for each bid in the order of the bids. */
export type Row = Readonly<{
  id: string;
  label: string;
  /** What the figures of the row rest on: a test method, a rule. Empty for nothing. */
  under: string;
  /** Holds figures that can't be compared with those of the row above it. */
  apart: boolean;
  cells: readonly Cell[];
}>;

export type Group = Readonly<{ id: string; label: string; rows: readonly Row[] }>;

export const emptyCell = (bid: string): Cell => ({
  bid,
  text: "",
  status: null,
  working: null,
  statements: [],
  lines: [],
  marks: [],
});
