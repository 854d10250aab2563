import type { NumberingSchemeId } from "./numbering-schemes";

/** How a stretch of text is told apart from what stands around it. Added and removed are the words of a comparison. */
export type RunStyle = "plain" | "strong" | "emphasis" | "added" | "removed";

export type Run = Readonly<{ text: string; style: RunStyle }>;

/** A text of one line or many, without line ends; a plain one may be a string. */
export type PrintedText = string | readonly Run[];

/** A place in a numbering scheme. The number itself follows from what stands before it, as in a word processor. */
export type NumberPlace = Readonly<{ scheme: NumberingSchemeId; level: number }>;

/** A column of a table with its share of the width; shares are held against each other. */
export type PrintedColumn = Readonly<{ heading: string; share: number; align: "start" | "end" }>;

/** A table with one row of headings. Where `hasRowHeads`, the first cell of each row names the row. */
export type PrintedTable = Readonly<{
  kind: "table";
  caption: string;
  columns: readonly PrintedColumn[];
  rows: readonly (readonly PrintedText[])[];
  hasRowHeads: boolean;
}>;

/** What a document is made of, in reading order. */
export type PrintedBlock = Readonly<
  | { kind: "heading"; level: 1 | 2 | 3; text: string; number?: NumberPlace }
  | { kind: "paragraph"; text: PrintedText; number?: NumberPlace }
  | { kind: "list"; isOrdered: boolean; items: readonly PrintedText[] }
  /** A remark that stands beside the text and is told apart from it. `depth` is that of the paragraph it belongs to. */
  | { kind: "note"; label: string; text: PrintedText; depth: number }
  | PrintedTable
  | { kind: "page-break" }
>;

/**
 * A document that can be printed, whatever the file format. `date` is the day it speaks of, as 2026-11-25; header and
 * footer stand on every page, the page number beside the footer.
 */
export type PrintedDocument = Readonly<{
  title: string;
  subtitle: string;
  /** Who gives it out. */
  author: string;
  language: "en-US";
  date: string;
  header: string;
  footer: string;
  blocks: readonly PrintedBlock[];
}>;
