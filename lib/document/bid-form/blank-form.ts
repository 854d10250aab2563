import { type CellStyle, type DataValidation, type WriteSheet, writeXlsx } from "hucre/xlsx";
import { type Property, type PropertyId, properties, propertyGroups, propertyOf } from "#lib/claim";
import type { CurrencyCode } from "#lib/quantity";
import { addressOf } from "../workbook/cell";
import { askedOf } from "./hints";
import { instructionsIn } from "./instructions";
import {
  allMethods,
  categoryLabels,
  evidenceLabels,
  formLists,
  kindLabels,
  type Lists,
  materialLabels,
  methodLabels,
  placementLabels,
  propertyLabels,
  roleLabels,
  sumLabels,
  usualConditions,
} from "./lists";
import type { FormOwner, NamedMaterial } from "./model";
import {
  type Column,
  claimsTable,
  type FormClaimField,
  infillTable,
  instructionsSheet,
  listsSheet,
  pricesTable,
  singleCells,
  type Table,
} from "./sheets";
import { formVersion } from "./version";

/** What a blank form is made from. */
export type FormSetting = Readonly<{
  owner: FormOwner;
  /** The prices of the examples are in it. */
  currency: CurrencyCode;
  /** The properties that the owner asks for, in the owner's order. */
  wanted: readonly PropertyId[];
  ownMaterials: readonly NamedMaterial[];
}>;

const spareClaims = 40;
const componentRows = 12;
const priceRows = 40;

/** The file says this day of itself, so that one project always gives the same bytes. */
const noDay = new Date(Date.UTC(2000, 0, 1));

const line = { style: "thin", color: { rgb: "B8B2A6" } } as const;
const border = { top: line, right: line, bottom: line, left: line };
const alignment = { vertical: "top", wrapText: true } as const;
const shade = (rgb: string) => ({ type: "pattern", pattern: "solid", fgColor: { rgb } }) as const;
const styles = {
  title: { font: { bold: true, size: 16 } },
  heading: { font: { bold: true }, fill: shade("DDD8CC"), border, alignment, numFmt: "@" },
  given: { fill: shade("F1EEE7"), border, alignment, numFmt: "@" },
  asked: { font: { bold: true }, fill: shade("F1EEE7"), border, alignment, numFmt: "@" },
  plain: { alignment, numFmt: "@" },
  // text format: “3/8” stays what was typed and is not turned into a day in March
  entry: { border, alignment, numFmt: "@", protection: { locked: false } },
} as const satisfies Record<string, CellStyle>;

type Style = keyof typeof styles;

/** A sheet while it is laid out. Rows and columns count from 1. */
class Laid {
  readonly cells: NonNullable<WriteSheet["cells"]> = new Map();
  readonly rows: (string | null)[][] = [];
  readonly validations: DataValidation[] = [];

  put(row: number, column: number, text: string | null, style: Style): void {
    while (this.rows.length < row) this.rows.push([]);
    const cells = this.rows[row - 1] ?? [];
    while (cells.length < column) cells.push(null);
    cells[column - 1] = text;
    this.cells.set(`${row - 1},${column - 1}`, {
      value: text,
      type: text === null ? "empty" : "string",
      style: styles[style],
    });
  }

  /** A drop-down; "ask" lets a bidder keep another text after a question, "only" does not. */
  offer(range: string, list: string, other: "ask" | "only"): void {
    this.validations.push({
      type: "list",
      range,
      formula1: list,
      allowBlank: true,
      showInputMessage: true,
      showErrorMessage: true,
      errorStyle: other === "ask" ? "warning" : "stop",
      errorTitle: "Not in the list",
      errorMessage:
        other === "ask"
          ? "This text is not in the list. Keep it only if no entry of the list says the same."
          : "Choose an entry of the list, or leave the cell empty.",
    });
  }

  sheet(name: string, layout: Pick<WriteSheet, "freezePane" | "columns">): WriteSheet {
    const { rows, cells, validations } = this;
    return {
      name,
      rows,
      cells,
      ...layout,
      dataValidations: validations,
      protection: { sheet: true, formatColumns: true, formatRows: true },
      pageSetup: { orientation: "landscape", fitToPage: true, fitToWidth: 1, fitToHeight: 0 },
    };
  }
}

const columnOf = <F extends string>({ columns }: Table<F>, field: F): number =>
  columns.findIndex((column) => column.kind === "entry" && column.field === field) + 1;

function headings<F extends string>(laid: Laid, { headingRow, columns }: Table<F>): void {
  for (const [index, { heading }] of columns.entries()) laid.put(headingRow, index + 1, heading, "heading");
}

const widths = (columns: readonly Column<string>[]) => columns.map(({ width }) => ({ width }));

/** A blank form for the bidders of one project, as the bytes of a workbook. The same setting gives the same bytes. */
export function blankBidForm(setting: FormSetting): Promise<Uint8Array> {
  const lists = formLists(setting.ownMaterials);
  return writeXlsx({
    sheets: [
      instructionsPage(setting),
      claimsPage(setting.wanted, lists),
      infillPage(setting.ownMaterials, lists),
      pricesPage(lists),
      listsPage(lists),
    ],
    workbookProtection: { lockStructure: true },
    properties: { title: `Bid form: ${setting.owner.name}`, created: noDay, modified: noDay },
  });
}

function instructionsPage({ owner: { key, name, owner }, currency }: FormSetting): WriteSheet {
  const laid = new Laid();
  laid.put(1, 1, "Bid form", "title");
  const texts = { project: name, owner, version: formVersion, key };
  for (const [index, id] of (["project", "owner", "version", "key"] as const).entries()) {
    laid.put(index + 2, 1, singleCells[id].labelText, "asked");
    laid.put(index + 2, 2, texts[id], "given");
  }
  for (const [index, id] of (["bidder", "system"] as const).entries()) {
    laid.put(index + 7, 1, singleCells[id].labelText, "asked");
    laid.put(index + 7, 2, null, "entry");
  }
  for (const [index, [subject, text]] of instructionsIn(currency).entries()) {
    laid.put(index + 10, 1, subject, "asked");
    laid.put(index + 10, 2, text, "plain");
  }
  return laid.sheet(instructionsSheet, { columns: [{ width: 34 }, { width: 100 }] });
}

/** What is asked for comes first, in the owner's order; then all other properties by group. */
function formProperties(wanted: readonly PropertyId[]): readonly Property[] {
  const asked = [...new Set(wanted)];
  const others = propertyGroups.flatMap(({ id }) =>
    properties.filter((property) => property.group === id && !asked.includes(property.id)),
  );
  return [...asked.map(propertyOf), ...others];
}

function claimsPage(wanted: readonly PropertyId[], lists: Lists): WriteSheet {
  const laid = new Laid();
  const { columns, headingRow, sheet } = claimsTable;
  headings(laid, claimsTable);
  const rows = formProperties(wanted);
  const first = headingRow + 1;
  const last = headingRow + rows.length + spareClaims;
  const at = (field: FormClaimField) => columnOf(claimsTable, field);
  const cell = (row: number, field: FormClaimField) => addressOf(row, at(field));
  for (let row = first; row <= last; row += 1) {
    const property = rows[row - first];
    const asked = property !== undefined && wanted.includes(property.id);
    for (const [index, column] of columns.entries())
      if (column.kind === "entry" && (column.field !== "property" || property === undefined))
        laid.put(row, index + 1, null, "entry");
    if (property !== undefined) laid.put(row, at("property"), property.label, asked ? "asked" : "given");
    laid.put(row, 1, property === undefined ? "free row" : asked ? "asked for" : "", "given");
    laid.put(row, at("property") + 1, property === undefined ? "" : askedOf(property), "given");
    laid.offer(cell(row, "method"), lists.areaOf(property === undefined ? allMethods : methodLabels(property)), "ask");
    if (property?.kind === "choice")
      laid.offer(cell(row, "figure"), lists.areaOf(property.choices.map(({ label }) => label)), "only");
  }
  const span = (field: FormClaimField, from = first) => `${cell(from, field)}:${cell(last, field)}`;
  laid.offer(span("property", first + rows.length), lists.areaOf(propertyLabels), "only");
  laid.offer(span("evidence"), lists.areaOf(evidenceLabels), "only");
  laid.offer(span("condition"), lists.areaOf(usualConditions), "ask");
  return laid.sheet(sheet, {
    columns: widths(columns),
    freezePane: { rows: headingRow, columns: at("property") },
  });
}

function infillPage(own: readonly NamedMaterial[], lists: Lists): WriteSheet {
  const laid = new Laid();
  const { columns, headingRow, sheet } = infillTable;
  laid.put(1, 1, singleCells.placement.labelText, "asked");
  laid.put(1, 2, null, "entry");
  laid.offer(singleCells.placement.entry, lists.areaOf(placementLabels), "only");
  headings(laid, infillTable);
  entryRows(laid, infillTable, componentRows);
  const span = spanOf(infillTable, componentRows);
  laid.offer(span("material"), lists.areaOf(materialLabels(own)), "ask");
  laid.offer(span("evidence"), lists.areaOf(evidenceLabels), "only");
  return laid.sheet(sheet, { columns: widths(columns), freezePane: { rows: headingRow } });
}

function pricesPage(lists: Lists): WriteSheet {
  const laid = new Laid();
  const { columns, headingRow, sheet } = pricesTable;
  for (const [index, id] of (["statedTotal", "statedTotalInWords"] as const).entries()) {
    laid.put(index + 1, 1, singleCells[id].labelText, "asked");
    laid.put(index + 1, 2, null, "entry");
  }
  headings(laid, pricesTable);
  entryRows(laid, pricesTable, priceRows);
  const span = spanOf(pricesTable, priceRows);
  laid.offer(span("role"), lists.areaOf(roleLabels), "only");
  laid.offer(span("shareOf"), lists.areaOf(sumLabels), "only");
  laid.offer(span("kind"), lists.areaOf(kindLabels), "only");
  laid.offer(span("category"), lists.areaOf(categoryLabels), "only");
  return laid.sheet(sheet, { columns: widths(columns), freezePane: { rows: headingRow, columns: 1 } });
}

function entryRows<F extends string>(laid: Laid, { columns, headingRow }: Table<F>, rows: number): void {
  for (let row = 1; row <= rows; row += 1)
    for (const index of columns.keys()) laid.put(headingRow + row, index + 1, null, "entry");
}

const spanOf =
  <F extends string>(table: Table<F>, rows: number) =>
  (field: F): string => {
    const column = columnOf(table, field);
    return `${addressOf(table.headingRow + 1, column)}:${addressOf(table.headingRow + rows, column)}`;
  };

/** The texts that the drop-downs offer; out of sight, as nobody fills it. */
function listsPage({ columns }: Lists): WriteSheet {
  const laid = new Laid();
  for (const [column, texts] of columns.entries())
    for (const [row, text] of texts.entries()) laid.put(row + 1, column + 1, text, "plain");
  return { ...laid.sheet(listsSheet, {}), hidden: true };
}
