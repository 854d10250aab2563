import { failed, type Result, succeeded } from "#lib/quantity";
import type { Sheet } from "./cell";
import { dateStyles } from "./date-styles";
import { limits } from "./limits";
import { type PackageParts, packageParts } from "./package-parts";
import type { WorkbookProblem } from "./problem";
import { sharedStrings } from "./shared-strings";
import { sheetCells } from "./sheet-cells";
import { workbookMap } from "./workbook-map";

/** The sheets that were asked for as far as they are there, the names of all others, and what else hangs on cells. */
export type Workbook = Readonly<{ sheets: readonly Sheet[]; others: readonly string[]; hasComments: boolean }>;

/**
 * The filled cells of a workbook from outside. What is too large, damaged, locked, or runs or fetches something is
 * refused as a whole, the cheapest look first; sheets that are not asked for are not unpacked.
 */
export function readWorkbook(file: Uint8Array, wanted: readonly string[]): Result<Workbook, WorkbookProblem> {
  const parts = packageParts(file);
  if (!parts.ok) return parts;
  const map = workbookMap(parts.value);
  if (!map.ok) return map;
  const texts = partRead(parts.value, map.value.sharedStrings, sharedStrings, []);
  if (!texts.ok) return texts;
  const dates = partRead(parts.value, map.value.styles, dateStyles, new Set<number>());
  if (!dates.ok) return dates;
  const setting = { sharedStrings: texts.value, dateStyles: dates.value, daysFrom: map.value.daysFrom };
  const sheets: Sheet[] = [];
  let characters = 0;
  for (const { name, part } of map.value.sheets) {
    if (!wanted.includes(name)) continue;
    const bytes = parts.value.bytes(part);
    if (!bytes.ok) return bytes;
    const sheet = sheetCells(name, { name: part, bytes: bytes.value }, setting);
    if (!sheet.ok) return sheet;
    for (const { text } of sheet.value.cells.values()) characters += text.length;
    if (characters > limits.characters) return failed({ kind: "too-much-text", sheet: name });
    sheets.push(sheet.value);
  }
  const others = map.value.sheets.map(({ name }) => name).filter((name) => !wanted.includes(name));
  const hasComments = parts.value.names.some((name) => /comments[^/]*\.xml$/i.test(name));
  return succeeded({ sheets, others, hasComments });
}

/** A part that a workbook need not have. */
function partRead<T>(
  parts: PackageParts,
  name: string | null,
  read: (name: string, bytes: Uint8Array) => Result<T, WorkbookProblem>,
  without: T,
): Result<T, WorkbookProblem> {
  if (name === null || !parts.has(name)) return succeeded(without);
  const bytes = parts.bytes(name);
  return bytes.ok ? read(name, bytes.value) : bytes;
}
