import { type Area, addressOf, type Cell, type Sheet } from "../workbook/cell";
import type { Table } from "./sheets";

/** A row of a table in which something is filled, by its fields. Cells without content are not in it. */
export type FormRow<Field extends string> = Readonly<{ row: number; cells: ReadonlyMap<Field, Cell> }>;

/** The filled rows of a table, from the top. */
export function formRows<F extends string>(sheet: Sheet, { columns, headingRow }: Table<F>): readonly FormRow<F>[] {
  const rows = new Map<number, Map<F, Cell>>();
  for (const cell of sheet.cells.values()) {
    const column = columns[cell.column - 1];
    if (cell.row <= headingRow || column?.kind !== "entry" || cell.text.trim() === "") continue;
    const cells = rows.get(cell.row) ?? new Map<F, Cell>();
    cells.set(column.field, cell);
    rows.set(cell.row, cells);
  }
  return [...rows].sort(([one], [other]) => one - other).map(([row, cells]) => ({ row, cells }));
}

/** Where a field of a row stands, filled or not. */
export const addressIn = <F extends string>({ columns }: Table<F>, row: number, field: F): string =>
  addressOf(row, columns.findIndex((column) => column.kind === "entry" && column.field === field) + 1);

export const headingOf = <F extends string>({ columns }: Table<F>, field: F): string =>
  columns.find((column) => column.kind === "entry" && column.field === field)?.heading ?? field;

/** Cells right of a table or, above its headings, beside the single cells named; nothing reads them. */
export function cellsOutside<F extends string>(
  sheet: Sheet,
  { columns, headingRow }: Table<F>,
  known: readonly string[],
): readonly Cell[] {
  return [...sheet.cells.values()].filter(
    ({ row, column, address, text }) =>
      text.trim() !== "" && (row < headingRow ? !known.includes(address) : column > columns.length),
  );
}

/** The first merged area that reaches into the headings or entries of a table. */
export const mergedIn = <F extends string>(sheet: Sheet, { columns }: Table<F>): Area | undefined =>
  sheet.merges.find(({ left, top, right, bottom }) => left <= columns.length && (left < right || top < bottom));

/** The text of a cell where it may be read: typed text, or the digits of a number. */
export function readableText(cell: Cell | undefined): string {
  if (cell === undefined) return "";
  return refusalOf(cell) === null ? cell.text.trim() : "";
}

const shortened = (text: string): string => (text.length > 80 ? `${text.slice(0, 80)}…` : text);

/** Why a cell is not read; null where it holds text or a number. */
export function refusalOf({ kind, text }: Cell): string | null {
  switch (kind) {
    case "text":
    case "number":
      return null;
    case "formula":
      return `The formula “${shortened(text)}” was found. Expected a typed value: neither a formula nor the result stored with it is read.`;
    case "date":
      return `The date ${shortened(text)} was found. Expected typed text, for instance “3/8 in”, in a cell with text format: without it a spreadsheet turns some entries into dates.`;
    case "yes-or-no":
      return `The value ${text} was found. Expected typed text.`;
    case "error":
      return `The error ${shortened(text)} was found. Expected a typed value.`;
  }
}

/** What is kept in a note about cells that were not read, so that the trace stays with the entry. */
export function tracesOf(sheet: string, cells: Iterable<Cell>): readonly string[] {
  return [...cells].flatMap((cell) =>
    refusalOf(cell) === null
      ? []
      : [
          `Cell ${cell.address} of sheet “${sheet}” of the filled form was not read; it held “${shortened(cell.text)}”.`,
        ],
  );
}
