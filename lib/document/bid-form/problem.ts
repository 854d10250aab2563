import { explainWorkbook, type WorkbookProblem } from "../workbook/problem";

/** Why a filled form is refused as a whole. Facts only; the words are in `explainForm`. */
export type FormProblem = Readonly<
  | { kind: "not-opened"; because: WorkbookProblem }
  | { kind: "sheet-missing"; sheet: string; found: readonly string[] }
  | { kind: "another-project"; read: string; name: string; expected: string }
  | { kind: "another-version"; read: string; expected: string }
  | { kind: "heading-changed"; sheet: string; cell: string; read: string; expected: string }
  | { kind: "cells-merged"; sheet: string; area: string }
>;

const quoted = (text: string): string => (text === "" ? "nothing" : `“${text}”`);

/** Says what was read and what was expected, with sheet and cell. */
export function explainForm(problem: FormProblem): string {
  switch (problem.kind) {
    case "not-opened":
      return explainWorkbook(problem.because);
    case "sheet-missing": {
      const found = problem.found.length === 0 ? "It has none." : `It has ${problem.found.map(quoted).join(", ")}.`;
      return `The workbook has no sheet “${problem.sheet}”. ${found} Expected the sheets of the blank bid form under their own names.`;
    }
    case "another-project":
      return `The form belongs to another project: cell B5 of sheet “Instructions” reads ${quoted(problem.read)}${problem.name === "" ? "" : `, for “${problem.name}”`}. Expected the key of this project, “${problem.expected}”.`;
    case "another-version":
      return `The form is of version ${quoted(problem.read)} (cell B4 of sheet “Instructions”). Expected version “${problem.expected}”: save a blank form anew and copy the entries into it.`;
    case "heading-changed":
      return `Cell ${problem.cell} of sheet “${problem.sheet}” reads ${quoted(problem.read)}. Expected “${problem.expected}”, as the blank form has it.`;
    case "cells-merged":
      return `Cells ${problem.area} of sheet “${problem.sheet}” are merged into one. Expected one entry a cell: take the merging back.`;
  }
}
