import { failed, type Result, succeeded } from "#lib/quantity";
import type { WorkbookProblem } from "./problem";
import { readXml } from "./xml";

/** Numbers of the formats that every program knows as dates or times. @source ECMA-376 part 1, 18.8.30 */
const builtIn = (format: number): boolean =>
  [14, 27, 50].some((first) => format >= first && format <= first + 8) || (format >= 45 && format <= 47);

/** Whether a format shows a date or time: day, month, year, hour or second outside of quoted and bracketed text. */
const showsDate = (code: string): boolean =>
  /[dmyhs]/i.test(code.replace(/"[^"]*"|\\.|_.|\*./g, "").replace(/\[(?!(?:h+|m+|s+)\])[^\]]*\]/gi, ""));

/** The styles of cells that show their number as a date, by their index. */
export function dateStyles(part: string, bytes: Uint8Array): Result<ReadonlySet<number>, WorkbookProblem> {
  const custom = new Map<number, boolean>();
  const formats: number[] = [];
  let inCellFormats = false;
  const problem = readXml(part, bytes, {
    open: (name, { numFmtId = "0", formatCode = "" }) => {
      if (name === "numFmt") custom.set(Number(numFmtId), showsDate(formatCode.slice(0, 500)));
      if (name === "cellXfs") inCellFormats = true;
      if (name === "xf" && inCellFormats) formats.push(Number(numFmtId));
      return null;
    },
    close: (name) => {
      if (name === "cellXfs") inCellFormats = false;
      return null;
    },
  });
  if (problem !== null) return failed(problem);
  const isDate = (format: number) => custom.get(format) ?? builtIn(format);
  return succeeded(new Set(formats.flatMap((format, index) => (isDate(format) ? [index] : []))));
}
