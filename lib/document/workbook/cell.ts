/**
 * A filled cell. `text` is what stands in it: typed text, the digits of a number, a date as year-month-day, TRUE or
 * FALSE, an error such as #DIV/0!, or a formula behind its equals sign.
 */
export type Cell = Readonly<{
  kind: "text" | "number" | "date" | "yes-or-no" | "error" | "formula";
  /** As people call it: "D5". */
  address: string;
  row: number;
  column: number;
  text: string;
}>;

/** A sheet by its filled cells. Rows and columns count from 1. */
export type Sheet = Readonly<{
  name: string;
  cells: ReadonlyMap<string, Cell>;
  merges: readonly Area[];
}>;

/** A block of cells, both corners included. */
export type Area = Readonly<{ text: string; top: number; left: number; bottom: number; right: number }>;

const letters = (column: number): string =>
  column <= 0 ? "" : letters(Math.floor((column - 1) / 26)) + String.fromCharCode(65 + ((column - 1) % 26));

/** Row and column from 1 → "D5". */
export const addressOf = (row: number, column: number): string => `${letters(column)}${row}`;

export type Position = Readonly<{ row: number; column: number }>;

/** "D5" or "$D$5" → row 5, column 4; null for what is no address of a sheet. */
export function positionOf(address: string): Position | null {
  const [, name, digits] = /^\$?([A-Z]{1,3})\$?([1-9]\d{0,6})$/.exec(address) ?? [];
  if (name === undefined || digits === undefined) return null;
  const column = [...name].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  return { row: Number(digits), column };
}

/** "B2:D5" → the block; null for what is none. */
export function areaOf(text: string): Area | null {
  const [first, second, ...rest] = text.split(":");
  const from = positionOf(first ?? "");
  const to = second === undefined ? from : positionOf(second);
  if (from === null || to === null || rest.length > 0) return null;
  return {
    text,
    top: Math.min(from.row, to.row),
    left: Math.min(from.column, to.column),
    bottom: Math.max(from.row, to.row),
    right: Math.max(from.column, to.column),
  };
}
