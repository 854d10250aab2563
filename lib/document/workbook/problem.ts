import { limits } from "./limits";

/** Why a file is not opened as a workbook. Facts only; the words are in `explainWorkbook`. */
export type WorkbookProblem = Readonly<
  | { kind: "empty" }
  | { kind: "too-large"; bytes: number }
  | { kind: "old-or-locked" }
  | { kind: "not-a-workbook" }
  | { kind: "damaged"; what: string }
  | { kind: "part-locked"; part: string }
  | { kind: "too-many-parts"; parts: number }
  | { kind: "inflates-too-far"; part: string; bytes: number }
  | { kind: "holds-macros"; part: string }
  | { kind: "refers-outside"; part: string }
  | { kind: "declares-entities"; part: string }
  | { kind: "too-many-sheets"; sheets: number }
  | { kind: "sheet-too-large"; sheet: string; cell: string }
  | { kind: "text-too-long"; sheet: string; cell: string; characters: number }
  | { kind: "too-much-text"; sheet: string }
>;

const number = (value: number): string => value.toLocaleString("en-US");

/** Says what was found in the file and what a workbook is expected to be. */
export function explainWorkbook(problem: WorkbookProblem): string {
  switch (problem.kind) {
    case "empty":
      return "The file is empty. Expected a workbook with the ending .xlsx.";
    case "too-large":
      return `The file has ${number(problem.bytes)} bytes; at most ${number(limits.fileBytes)} are read. Take pictures out of it, or copy the entries into a fresh blank form.`;
    case "old-or-locked":
      return "The file is a workbook of the old binary kind (.xls) or is locked with a password. Save it without a password as an Excel workbook (.xlsx).";
    case "not-a-workbook":
      return "The file is not a workbook. Expected an Excel workbook with the ending .xlsx.";
    case "damaged":
      return `The file is damaged: ${problem.what}. Nothing was read from it. Save the workbook again and send that file.`;
    case "part-locked":
      return `The part “${problem.part}” of the file is locked with a password. Expected a workbook without one.`;
    case "too-many-parts":
      return `The file consists of ${number(problem.parts)} parts; at most ${limits.parts} are read. Expected a bid form, which has about 20.`;
    case "inflates-too-far":
      return `The part “${problem.part}” unpacks to ${number(problem.bytes)} bytes or more, far beyond a bid form. It was not read.`;
    case "holds-macros":
      return `The file holds a program (“${problem.part}”). Expected a workbook without macros: save it as .xlsx.`;
    case "refers-outside":
      return `The file draws on something outside itself (“${problem.part}”). Expected a workbook that stands alone, with typed entries.`;
    case "declares-entities":
      return `The part “${problem.part}” declares abbreviations of its own, which no spreadsheet program writes. It was not read.`;
    case "too-many-sheets":
      return `The workbook has ${problem.sheets} sheets; at most ${limits.sheets} are looked at.`;
    case "sheet-too-large":
      return `Sheet “${problem.sheet}” goes on as far as cell ${problem.cell}. At most ${number(limits.rows)} rows, ${limits.columns} columns and ${number(limits.cells)} filled cells are read.`;
    case "text-too-long":
      return `Cell ${problem.cell} of sheet “${problem.sheet}” has ${number(problem.characters)} characters; a cell holds at most ${number(limits.cellCharacters)}.`;
    case "too-much-text":
      return `With sheet “${problem.sheet}” the workbook holds more than ${number(limits.characters)} characters. Expected a bid form.`;
  }
}
