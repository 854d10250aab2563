import type { Severity } from "#lib/crosscheck";
import type { Working } from "#lib/figure";
import type { StatusWord } from "../../../../_components/status";

/** One thing that is said or worked out, as a cell shows it, in the reader's units. */
export type Said = Readonly<{
  /** The number where the row names a unit, else the whole text. */
  text: string;
  /** What follows the number, the space before it included: " in", "/ft²". The row's head names it, so it is not shown. */
  unit: string;
  /** What tells it from the bid's other statements on this line: "new", "year 5", "Silica sand". Empty for nothing. */
  qualifier: string;
  /** How well it is shown: a place in the order of evidence levels counted from 1, 0 for what is worked out. */
  level: number;
}>;

/** One thing to know about a statement: how it was entered, what shows it, where it is written. */
export type Fact = Readonly<{ label: string; text: string }>;

/** A statement with what stands behind it. `id` is where it was entered; empty for what is worked out. */
export type Statement = Said & Readonly<{ id: string; facts: readonly Fact[] }>;

/** A finding as its title tells. One that an answer settled is no question any more. */
type MarkTitle = Readonly<{ severity: Severity; title: string; isSettled: boolean }>;

/** A finding where it belongs, in the reader's words. */
export type Mark = MarkTitle & Readonly<{ key: string; sentence: string; question: string }>;

/** Findings of one title as a cell shows them. A rule that holds a bid against many others finds the same many times. */
export type ShownMark = MarkTitle & Readonly<{ count: number }>;

/** What stands where a row and a bid meet, before anything is opened. */
export type ShownCell = Readonly<{
  status: StatusWord | null;
  said: readonly Said[];
  /** The most serious first, settled ones last. */
  marks: readonly ShownMark[];
  hasWorking: boolean;
  /** Whether sentences explain the status. */
  hasReasons: boolean;
}>;

/** The same with all that can be opened. */
export type Cell = Readonly<{
  bid: string;
  status: StatusWord | null;
  statements: readonly Statement[];
  /** How a derived figure comes about; null where nothing is worked out. */
  working: Working | null;
  /** Sentences that explain the status. */
  lines: readonly string[];
  marks: readonly Mark[];
}>;

/** The head of a row. */
export type RowHead = Readonly<{
  id: string;
  label: string;
  /** The unit of every figure in the row: "in", "$/ft²", "years". Empty where its cells are no quantities. */
  unit: string;
  /** What the figures of the row rest on: a test method, a rule. Empty for nothing. */
  under: string;
  /** Holds figures that can't be compared with those of the row above it. */
  apart: boolean;
}>;

/** One property or figure across all bids, one cell for each bid in the order of the bids. */
export type Row = RowHead & Readonly<{ cells: readonly Cell[] }>;

export type Group = Readonly<{ id: string; label: string; rows: readonly Row[] }>;

export const emptyCell = (bid: string): Cell => ({
  bid,
  status: null,
  statements: [],
  working: null,
  lines: [],
  marks: [],
});

/** Something worked out, without evidence of its own. */
export const workedOut = (text: string, unit = ""): readonly Statement[] =>
  text === "" ? [] : [{ id: "", text, unit, qualifier: "", level: 0, facts: [] }];

/** Each title once, in the order of the findings, and how often it stands. */
function shownMarks(marks: readonly Mark[]): readonly ShownMark[] {
  const counted = new Map<string, ShownMark>();
  for (const { severity, title, isSettled } of marks) {
    const key = `${severity} ${isSettled} ${title}`;
    counted.set(key, { severity, title, isSettled, count: (counted.get(key)?.count ?? 0) + 1 });
  }
  return [...counted.values()];
}

/** A cell without what only opens. */
export const shownCell = ({ status, statements, working, lines, marks }: Cell): ShownCell => ({
  status,
  said: statements.map(({ text, unit, qualifier, level }) => ({ text, unit, qualifier, level })),
  marks: shownMarks(marks),
  hasWorking: working !== null,
  hasReasons: lines.length > 0,
});

/** What a cell says on one line, each figure with its unit, to compare and to copy. */
export const saidInWords = (said: readonly Said[]): string =>
  said
    .map(({ text, unit, qualifier }) => (qualifier === "" ? `${text}${unit}` : `${text}${unit} (${qualifier})`))
    .join("; ");
