import { failed, type Result, succeeded } from "#lib/quantity";
import { type Area, addressOf, areaOf, type Cell, positionOf, type Sheet } from "./cell";
import { limits } from "./limits";
import type { WorkbookProblem } from "./problem";
import { unescaped } from "./shared-strings";
import { type Attributes, readXml } from "./xml";

/** What the cells of a sheet refer to elsewhere in the workbook. */
export type CellSetting = Readonly<{
  sharedStrings: readonly string[];
  dateStyles: ReadonlySet<number>;
  daysFrom: 1900 | 1904;
}>;

/** A cell while its tags are being read. */
type Opened = { address: string; type: string; style: number; value: string; words: string; formula: string | null };

/** The filled cells of a sheet and its merged areas. @source ECMA-376 part 1, 18.3.1 */
export function sheetCells(
  name: string,
  part: Readonly<{ name: string; bytes: Uint8Array }>,
  setting: CellSetting,
): Result<Sheet, WorkbookProblem> {
  const cells = new Map<string, Cell>();
  const merges: Area[] = [];
  const damaged = (what: string): WorkbookProblem => ({ kind: "damaged", what: `sheet “${name}” ${what}` });
  let row = 0;
  let column = 0;
  let cell: Opened | null = null;
  let into: "value" | "words" | "formula" | null = null;
  let inAid = false;

  const openCell = ({ r, t = "n", s = "0" }: Attributes): WorkbookProblem | null => {
    const at = r === undefined ? { row, column: column + 1 } : positionOf(r);
    if (at === null || at.row !== row || cell !== null) return damaged(`has a cell “${r}” out of its place`);
    column = at.column;
    cell = { address: addressOf(row, column), type: t, style: Number(s), value: "", words: "", formula: null };
    return null;
  };
  const closeCell = (): WorkbookProblem | null => {
    if (cell === null) return null;
    const read = contentOf(cell, setting);
    const { address } = cell;
    cell = null;
    if (read === "unreadable") return damaged(`has a cell ${address} whose content can’t be found or read`);
    if (read === null) return null;
    if (cells.has(address)) return damaged(`has two cells ${address}`);
    if (read.text.length > limits.cellCharacters)
      return { kind: "text-too-long", sheet: name, cell: address, characters: read.text.length };
    if (row > limits.rows || column > limits.columns || cells.size >= limits.cells)
      return { kind: "sheet-too-large", sheet: name, cell: address };
    cells.set(address, { ...read, address, row, column });
    return null;
  };

  const problem = readXml(part.name, part.bytes, {
    open: (tag, attributes) => {
      if (tag === "row") {
        row = attributes.r === undefined ? row + 1 : Number(attributes.r);
        column = 0;
        return Number.isInteger(row) && row > 0 ? null : damaged("has a row without a number");
      }
      if (tag === "c") return openCell(attributes);
      if (tag === "mergeCell") {
        const area = areaOf(attributes.ref ?? "");
        if (area !== null) merges.push(area);
        return area === null || merges.length > limits.merges
          ? damaged("merges cells in a way that can’t be read")
          : null;
      }
      if (tag === "rPh") inAid = true;
      if (tag === "v") into = "value";
      else if (tag === "t" && !inAid) into = "words";
      else if (tag === "f") {
        into = "formula";
        if (cell !== null) cell.formula = "";
      } else into = null;
      return null;
    },
    text: (read) => {
      if (cell === null || into === null) return;
      if (into === "formula") cell.formula += read;
      else cell[into] += read;
    },
    close: (tag) => {
      if (tag === "rPh") inAid = false;
      if (tag === "v" || tag === "t" || tag === "f") into = null;
      return tag === "c" ? closeCell() : null;
    },
  });
  return problem === null ? succeeded({ name, cells, merges }) : failed(problem);
}

type Content = Pick<Cell, "kind" | "text">;

/** What stands in a cell; null where nothing does. A formula counts as one whatever result is stored with it. */
function contentOf(
  { type, style, value, words, formula }: Opened,
  setting: CellSetting,
): Content | "unreadable" | null {
  if (formula !== null) return { kind: "formula", text: `=${formula.slice(0, limits.cellCharacters - 1)}` };
  const typed = (text: string): Content | null => (text === "" ? null : { kind: "text", text });
  switch (type) {
    case "inlineStr":
      return typed(unescaped(words));
    case "str":
      return typed(unescaped(value));
    case "s": {
      if (value === "") return null;
      const shared = /^\d{1,9}$/.test(value.trim()) ? setting.sharedStrings[Number(value)] : undefined;
      return shared === undefined ? "unreadable" : typed(shared);
    }
    case "b":
      if (value === "") return null;
      return { kind: "yes-or-no", text: /^(1|true)$/i.test(value.trim()) ? "TRUE" : "FALSE" };
    case "e":
      return { kind: "error", text: value };
    case "d":
      return value === "" ? null : { kind: "date", text: value };
    case "n":
      return numberIn(value, style, setting);
    default:
      return "unreadable";
  }
}

const millisecondsADay = 86_400_000;
/** Day 0 of serial dates: 30 December 1899 makes up for a 29 February 1900 that never was. */
const dayZero = { 1900: Date.UTC(1899, 11, 30), 1904: Date.UTC(1904, 0, 1) };
const lastDay = 2_958_465; // 31 December 9999

function numberIn(value: string, style: number, { dateStyles, daysFrom }: CellSetting): Content | "unreadable" | null {
  if (value === "") return null;
  const number = /^\s*[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?\s*$/i.test(value) ? Number(value) : Number.NaN;
  if (!Number.isFinite(number)) return "unreadable";
  if (dateStyles.has(style) && number >= 0 && number <= lastDay) {
    const date = new Date(dayZero[daysFrom] + Math.floor(number) * millisecondsADay).toISOString();
    return { kind: "date", text: date.slice(0, 10) };
  }
  // spreadsheet programs show 15 digits; the two behind them are what binary numbers leave
  return { kind: "number", text: String(Number(number.toPrecision(15))) };
}
