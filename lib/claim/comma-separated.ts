import type { Rows } from "./pasted-rows";

/** Starts of a text that spreadsheet programs take for a formula, full-width forms among them. @source OWASP, CSV injection */
const startsFormula = /^'*[=+\-@\t\r\n＝＋－＠]/;

/**
 * A text as it may stand in a file for spreadsheets: one that would run as a formula gets an apostrophe in front, so
 * "-0.5" is written as "'-0.5". A text that looks so already gets one more, so that reading takes away exactly one.
 */
const guarded = (text: string): string => (startsFormula.test(text) ? `'${text}` : text);

/** The text that was guarded; any other text stays as it is. */
export const unguarded = (text: string): string =>
  text.startsWith("'") && startsFormula.test(text) ? text.slice(1) : text;

const quoted = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

const byteOrderMark = "\uFEFF";

/** Rows as a file of comma-separated values, guarded, with the mark by which spreadsheets know UTF-8. @source RFC 4180 */
export const commaSeparated = (rows: Rows): string =>
  `${byteOrderMark}${rows.map((cells) => `${cells.map((cell) => quoted(guarded(cell))).join(",")}\r\n`).join("")}`;

const cellAt = /"((?:[^"]|"")*)"|([^,\r\n]*)/y;

/** The rows of a file of comma-separated values, guards taken off. @source RFC 4180 */
export function parseCommaSeparated(text: string): Rows {
  const source = text.startsWith(byteOrderMark) ? text.slice(1) : text;
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at < source.length || row.length > 0) {
    cellAt.lastIndex = at;
    const [read = "", inQuotes, plain = ""] = cellAt.exec(source) ?? [];
    row.push(unguarded(inQuotes === undefined ? plain : inQuotes.replaceAll('""', '"')));
    at += read.length;
    if (source[at] === ",") {
      at += 1;
      continue;
    }
    // text behind a closing quote is against RFC 4180; it is read as a cell of its own rather than dropped
    if (at < source.length && !/[\r\n]/.test(source.charAt(at))) continue;
    at += source.startsWith("\r\n", at) ? 2 : 1;
    rows.push(row);
    row = [];
  }
  return rows;
}
