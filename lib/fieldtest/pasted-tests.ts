import { explainPaste, parseCommaSeparated, parsePastedRows, type Rows } from "#lib/claim";
import {
  type DimensionName,
  explainQuantity,
  failed,
  parseExact,
  type Result,
  succeeded,
  type UnitOf,
} from "#lib/quantity";

/** Something in a pasted cell that does not read. Rows and columns count from 1. */
export type PastedCellProblem = Readonly<{ row: number; column: number; read: string; message: string }>;

/** A row of drops, every cell as typed; what stands beyond the known columns is kept as a note. */
export type PastedDrops = Readonly<{
  label: string;
  drops: readonly [string, string, string];
  note: string;
}>;

/** A row of depths, units added where the cell has none. */
export type PastedDepth = Readonly<{ x: string; y: string; depth: string; note: string }>;

/** All rows that hold anything, whether they read or not, and what does not read. Nothing typed is dropped. */
export type Pasted<Row> = Readonly<{
  heading: readonly string[];
  rows: readonly Row[];
  problems: readonly PastedCellProblem[];
}>;

/** The cells of a block copied from a spreadsheet or of a file with commas or semicolons; why not, in a sentence. */
function cellsOf(text: string): Result<Rows, string> {
  if (text.includes("\t") || !/[,;]/.test(text)) {
    const pasted = parsePastedRows(text);
    return pasted.ok ? pasted : failed(explainPaste(pasted.problem));
  }
  const semicolons = text.split(/\r\n|\n|\r/).some((line) => line.includes(";"));
  const rows = semicolons
    ? text.split(/\r\n|\n|\r/).map((line) => line.split(";").map((cell) => cell.replace(/^\s*"(.*)"\s*$/, "$1")))
    : parseCommaSeparated(text);
  return rows.length > mostRows
    ? failed(`The block has ${rows.length.toLocaleString("en-US")} rows; at most 2,000 are read.`)
    : succeeded(rows);
}

const mostRows = 2000;

type Table = Readonly<{
  heading: readonly string[];
  rows: readonly Readonly<{ row: number; cells: readonly string[] }>[];
}>;

/** Words that head the columns of such tables. */
const headingWord = /\b(drops?|locations?|points?|spots?|depths?|levels?|g-?max|x|y)\b/i;

/** Rows that hold something; a first row of column names without figures is the heading. */
function tableOf(cells: Rows): Table {
  const filled = cells
    .map((row, index) => ({ row: index + 1, cells: row.map((cell) => cell.trim()) }))
    .filter((row) => row.cells.some((cell) => cell !== ""));
  const [first, ...others] = filled;
  const headed = first?.cells.some((cell) => headingWord.test(cell)) && !first.cells.some(startsWithDigit);
  return first !== undefined && headed ? { heading: first.cells, rows: others } : { heading: [], rows: filled };
}

const startsWithDigit = (cell: string) => /^[^\p{L}]*\d/u.test(cell);
const beyond = (cells: readonly string[], known: number) =>
  cells
    .slice(known)
    .filter((cell) => cell !== "")
    .join("; ");

function complaintAbout<D extends DimensionName>(dimension: D, text: string): string | null {
  const parsed = parseExact(dimension, text);
  return parsed.ok ? null : explainQuantity(parsed.problem);
}

/** Drops from a pasted block: location, drop 1, drop 2, drop 3. An empty cell is a drop that was not made. */
export function pastedDrops(text: string): Result<Pasted<PastedDrops>, string> {
  const cells = cellsOf(text);
  if (!cells.ok) return cells;
  const { heading, rows } = tableOf(cells.value);
  const problems = rows.flatMap(({ row, cells: [label = "", ...rest] }) => [
    ...(label === ""
      ? [{ row, column: 1, read: "", message: "The location has no name. Expected one, for instance “3”." }]
      : []),
    ...rest.slice(0, 3).flatMap((read, index): readonly PastedCellProblem[] => {
      const message = read === "" ? null : complaintAbout("impactLevel", read);
      return message === null ? [] : [{ row, column: index + 2, read, message }];
    }),
  ]);
  return succeeded({
    heading,
    rows: rows.map(({ cells: [label = "", first = "", second = "", third = "", ...rest] }) => ({
      label,
      drops: [first, second, third] as const,
      note: beyond(rest, 0),
    })),
    problems,
  });
}

/** Units of cells that are bare numbers. */
export type PastedUnits = Readonly<{ position: UnitOf<"coordinate">; depth: UnitOf<"length"> }>;

/** Depths from a pasted block: x, y, depth. Bare numbers get the units handed in. */
export function pastedDepths(text: string, units: PastedUnits): Result<Pasted<PastedDepth>, string> {
  const cells = cellsOf(text);
  if (!cells.ok) return cells;
  const { heading, rows } = tableOf(cells.value);
  const read = rows.map(({ row, cells: [x = "", y = "", depth = "", ...rest] }) => ({
    row,
    x: inUnit(x, units.position),
    y: inUnit(y, units.position),
    depth: inUnit(depth, units.depth),
    note: beyond(rest, 0),
  }));
  const problems = read.flatMap(({ row, x, y, depth }) =>
    [
      { column: 1, text: x, message: complaintAbout("coordinate", x) },
      { column: 2, text: y, message: complaintAbout("coordinate", y) },
      { column: 3, text: depth, message: complaintAbout("length", depth) },
    ].flatMap(({ column, text: typed, message }) => (message === null ? [] : [{ row, column, read: typed, message }])),
  );
  return succeeded({ heading, rows: read.map(({ row: _, ...values }) => values), problems });
}

/** A bare number with the unit behind it; anything else as typed. */
const inUnit = (text: string, unit: string) => (/^[-+−]?[\d.,]+$/.test(text) ? `${text} ${unit}` : text);
