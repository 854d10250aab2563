import { failed, type Result, succeeded } from "#lib/quantity";
import { addressOf, type Cell, type Sheet } from "../workbook/cell";
import { readWorkbook, type Workbook } from "../workbook/read-workbook";
import { claimsSheet } from "./claims-sheet";
import { cellsOutside, mergedIn, readableText, refusalOf } from "./form-rows";
import { infillSheet } from "./infill-sheet";
import type { FilledForm, FormCell, NamedMaterial } from "./model";
import { pricesSheet } from "./prices-sheet";
import type { FormProblem } from "./problem";
import {
  claimsTable,
  formSheets,
  infillTable,
  instructionsSheet,
  listsSheet,
  pricesTable,
  singleCells,
  type Table,
} from "./sheets";
import { formVersion } from "./version";

/** What a form is held against: the key of the project and the materials that its brief describes. */
export type FormExpected = Readonly<{ key: string; ownMaterials: readonly NamedMaterial[] }>;

/**
 * Reads a filled bid form. A file that is not this project's form in its present shape is refused as a whole; in one
 * that is, every cell is read or named with what is in its way.
 */
export function readBidForm(file: Uint8Array, expected: FormExpected): Result<FilledForm, FormProblem> {
  const workbook = readWorkbook(file, formSheets);
  if (!workbook.ok) return failed({ kind: "not-opened", because: workbook.problem });
  const { sheets } = workbook.value;
  const names = [...sheets.map(({ name }) => name), ...workbook.value.others];
  const sheetNamed = (wanted: string) => sheets.find(({ name }) => name === wanted);
  const missing = formSheets.find((name) => sheetNamed(name) === undefined);
  const instructions = sheetNamed(instructionsSheet);
  if (instructions !== undefined) {
    const problem = notThisForm(instructions, expected.key);
    if (problem !== null) return failed(problem);
  }
  const [claims, infill, prices] = [claimsTable, infillTable, pricesTable].map(({ sheet }) => sheetNamed(sheet));
  if (missing !== undefined || !instructions || !claims || !infill || !prices)
    return failed({ kind: "sheet-missing", sheet: missing ?? instructionsSheet, found: names });
  const changed =
    labelChanged(instructions, [singleCells.bidder, singleCells.system]) ??
    labelChanged(infill, [singleCells.placement]) ??
    labelChanged(prices, [singleCells.statedTotal, singleCells.statedTotalInWords]) ??
    tableChanged(claims, claimsTable) ??
    tableChanged(infill, infillTable) ??
    tableChanged(prices, pricesTable);
  if (changed !== null) return failed(changed);
  const claimed = claimsSheet(claims);
  const filling = infillSheet(infill, expected.ownMaterials);
  const priced = pricesSheet(prices);
  const head = (["bidder", "system"] as const).flatMap((id) => headCell(instructions, singleCells[id]));
  return succeeded({
    bidder: readableText(instructions.cells.get(singleCells.bidder.entry)),
    system: readableText(instructions.cells.get(singleCells.system.entry)),
    placement: filling.placement,
    claims: claimed.claims,
    components: filling.components,
    prices: priced.prices,
    statedTotal: priced.statedTotal,
    statedTotalInWords: priced.statedTotalInWords,
    cells: [...head, ...claimed.cells, ...filling.cells, ...priced.cells],
    remarks: remarksOn(workbook.value, [
      ...outside(claims, claimsTable, []),
      ...outside(infill, infillTable, [singleCells.placement.label, singleCells.placement.entry]),
      ...outside(
        prices,
        pricesTable,
        [singleCells.statedTotal, singleCells.statedTotalInWords].flatMap(({ label, entry }) => [label, entry]),
      ),
    ]),
  });
}

type Single = (typeof singleCells)[keyof typeof singleCells];

const textAt = (sheet: Sheet, address: string): string => sheet.cells.get(address)?.text.trim() ?? "";

function labelChanged(sheet: Sheet, singles: readonly Single[]): FormProblem | null {
  const changed = singles.find(({ label, labelText }) => textAt(sheet, label) !== labelText);
  if (changed === undefined) {
    const merged = sheet.merges.find(({ top, left, right, bottom }) =>
      singles.some(({ entry }) =>
        [addressOf(top, left), addressOf(top, right), addressOf(bottom, right)].includes(entry),
      ),
    );
    return merged === undefined ? null : { kind: "cells-merged", sheet: sheet.name, area: merged.text };
  }
  const { label, labelText } = changed;
  return { kind: "heading-changed", sheet: sheet.name, cell: label, read: textAt(sheet, label), expected: labelText };
}

/** Whose form it is and in which version, as its first sheet says. */
function notThisForm(sheet: Sheet, key: string): FormProblem | null {
  const label = labelChanged(sheet, [singleCells.version, singleCells.key]);
  if (label !== null) return label;
  const [readKey, readVersion] = [singleCells.key, singleCells.version].map(({ entry }) => textAt(sheet, entry));
  if (readKey !== key)
    return {
      kind: "another-project",
      read: readKey ?? "",
      name: textAt(sheet, singleCells.project.entry),
      expected: key,
    };
  return readVersion === formVersion
    ? null
    : { kind: "another-version", read: readVersion ?? "", expected: formVersion };
}

function tableChanged<F extends string>(sheet: Sheet, table: Table<F>): FormProblem | null {
  for (const [index, { heading }] of table.columns.entries()) {
    const cell = addressOf(table.headingRow, index + 1);
    const read = textAt(sheet, cell);
    if (read !== heading) return { kind: "heading-changed", sheet: sheet.name, cell, read, expected: heading };
  }
  const merged = mergedIn(sheet, table);
  return merged === undefined ? null : { kind: "cells-merged", sheet: sheet.name, area: merged.text };
}

function headCell(sheet: Sheet, { entry, labelText }: Single): readonly FormCell[] {
  const cell = sheet.cells.get(entry);
  if (cell === undefined) return [];
  const { text, address } = cell;
  return [
    { sheet: sheet.name, address, about: "The bid", heading: labelText, text, reading: "", problem: refusalOf(cell) },
  ];
}

type Outside = Readonly<{ sheet: string; cell: Cell }>;

const outside = <F extends string>(sheet: Sheet, table: Table<F>, known: readonly string[]): readonly Outside[] =>
  cellsOutside(sheet, table, known).map((cell) => ({ sheet: sheet.name, cell }));

const mostNamed = 20;

function remarksOn({ others, hasComments }: Workbook, cells: readonly Outside[]): readonly string[] {
  const more = cells.length - mostNamed;
  return [
    ...others
      .filter((name) => name !== listsSheet)
      .map((name) => `Sheet “${name}” is not part of the form; it was not read.`),
    ...(hasComments ? ["Comments on cells are not read."] : []),
    ...cells
      .slice(0, mostNamed)
      .map(
        ({ sheet, cell }) =>
          `Cell ${cell.address} of sheet “${sheet}” stands outside the form and was not read: “${cell.text.trim().slice(0, 80)}”.`,
      ),
    ...(more > 0 ? [`${more} more cells outside the form were not read.`] : []),
  ];
}
