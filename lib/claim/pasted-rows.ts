import { failed, type Result, succeeded } from "#lib/quantity";

const mostRows = 2000;
const mostCharacters = 200_000;

export type PasteProblem = Readonly<{ kind: "too-many-rows"; rows: number } | { kind: "too-long"; length: number }>;

/** Cells of a table, row by row. Rows may differ in length. */
export type Rows = readonly (readonly string[])[];

/** A cell in quotes as spreadsheets write it: doubled quotes inside, a tab, a line end or nothing behind it. */
const quotedCell = /"([^"]*(?:""[^"]*)*)"(?=\t|\r\n|\n|\r|$)/y;
const plainCell = /[^\t\r\n]*/y;
const lineEnd = /\r\n|\n|\r/y;

/**
 * The cells of a block copied from a spreadsheet: tabs between cells, line ends between rows, quotes around cells that
 * hold tabs, line ends or quotes. A quote that closes nowhere, as in 2" written bare, is part of the text.
 */
export function parsePastedRows(text: string): Result<Rows, PasteProblem> {
  if (text.length > mostCharacters) return failed({ kind: "too-long", length: text.length });
  const rows: string[][] = [];
  let at = 0;
  while (at < text.length) {
    const row: string[] = [];
    at = readRow(text, at, row);
    rows.push(row);
  }
  return rows.length > mostRows ? failed({ kind: "too-many-rows", rows: rows.length }) : succeeded(rows);
}

/** Reads one row into `row` and returns where the next one starts. */
function readRow(text: string, start: number, row: string[]): number {
  let at = start;
  for (;;) {
    const cell = readCell(text, at);
    row.push(cell.text);
    if (text[cell.end] !== "\t") return cell.end + (matchAt(lineEnd, text, cell.end)?.[0].length ?? 0);
    at = cell.end + 1;
  }
}

function readCell(text: string, at: number): Readonly<{ text: string; end: number }> {
  const quoted = text[at] === '"' ? matchAt(quotedCell, text, at) : null;
  if (quoted !== null) return { text: (quoted[1] ?? "").replaceAll('""', '"'), end: at + quoted[0].length };
  const plain = matchAt(plainCell, text, at)?.[0] ?? "";
  return { text: plain, end: at + plain.length };
}

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

export function explainPaste(problem: PasteProblem): string {
  switch (problem.kind) {
    case "too-many-rows":
      return `The pasted block has ${problem.rows.toLocaleString("en-US")} rows; at most ${mostRows.toLocaleString("en-US")} are read at once. Paste it in parts.`;
    case "too-long":
      return `The pasted block has ${problem.length.toLocaleString("en-US")} characters; at most ${mostCharacters.toLocaleString("en-US")} are read at once. Paste it in parts.`;
  }
}
