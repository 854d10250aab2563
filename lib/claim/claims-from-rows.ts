import { matchEvidence } from "./evidence";
import { matchMethod, matchProperty } from "./find";
import { type ClaimField, type ClaimText, claimFields } from "./model";
import type { Rows } from "./pasted-rows";
import { matchAccreditation, matchTestedBuild } from "./report-details";
import { claimSchema } from "./schema";

/** What is in the way of one cell; "row" where it is about the row as a whole. */
export type CellProblem = Readonly<{ field: ClaimField | "row"; message: string }>;

/** One row of the table as a claim in text. `row` counts from 1 as in the spreadsheet, headings included. */
export type PastedClaim = Readonly<{ row: number; claim: ClaimText; problems: readonly CellProblem[] }>;

export type PastedClaims = Readonly<{
  claims: readonly PastedClaim[];
  /** Headings that name no field; their columns were not read. */
  unreadHeadings: readonly string[];
  /** Rows with nothing in them, counted and left out. */
  blankRows: number;
}>;

/** What headings say besides the names of the fields. */
const headings: Readonly<Record<ClaimField, readonly string[]>> = {
  property: ["property", "item"],
  figure: ["figure", "value", "claimed"],
  method: ["method", "testmethod"],
  condition: ["condition"],
  evidence: ["evidence"],
  document: ["document", "source"],
  page: ["page", "pages"],
  words: ["words", "aswritten", "wording"],
  note: ["note", "notes", "remarks"],
  edition: ["edition", "editionofthemethod", "methodedition"],
  date: ["date", "dateofthereport", "reportdate", "dateofreport", "testdate", "dateoftest"],
  laboratory: ["laboratory", "lab", "testlaboratory", "testedby"],
  accreditation: ["accreditation", "accredited"],
  build: ["build", "testedbuild"],
  testField: ["testfield", "fieldtested", "testedfield", "field"],
  fieldCount: ["fieldcount", "fieldsbehindthefigure", "numberoffields", "fields"],
  spread: ["spread", "standarddeviation", "repeatability", "deviation"],
};

/** Which field each column of a pasted table holds; null for a column that no field takes. */
export type PastedLayout = Readonly<{ columns: readonly (ClaimField | null)[]; headingRows: 0 | 1 }>;

/**
 * Claims from a pasted table. A first row with a heading "Property" names the columns in any order and case; without it
 * the columns are property, figure, method, condition, evidence, document, page, words, note, edition, date,
 * laboratory, accreditation, build, field tested, fields behind the figure, standard deviation.
 * Every row with content comes back with what is in the way of it. An empty evidence cell is read as "stated".
 * @param idFor names the claim of a row
 * @param layout which column holds what, where a person has said so
 */
export function claimsFromRows(
  rows: Rows,
  idFor: (row: number) => string = (row) => `pasted-${row}`,
  layout: PastedLayout = layoutOf(rows),
): PastedClaims {
  const { columns, headingRows } = layout;
  const headingCells = headingRows === 1 ? (rows[0] ?? []) : [];
  const numbered = rows.map((cells, index) => ({ cells, row: index + 1 })).slice(headingRows);
  const filled = numbered.filter(({ cells }) => cells.some((cell) => cell.trim() !== ""));
  return {
    claims: filled.map(({ cells, row }) => pastedClaim(cells, columns, { row, id: idFor(row) })),
    unreadHeadings: headingCells.filter((heading, at) => (columns[at] ?? null) === null && heading.trim() !== ""),
    blankRows: numbered.length - filled.length,
  };
}

/** How the columns are taken as long as nobody says otherwise: by their headings, or in the order of the fields. */
export function layoutOf(rows: Rows): PastedLayout {
  const named = (rows[0] ?? []).map(fieldNamed);
  if (!named.includes("property")) return { columns: claimFields, headingRows: 0 };
  // a second column under the same heading would overwrite the first
  const columns = named.map((field, at) => (field !== null && named.indexOf(field) === at ? field : null));
  return { columns, headingRows: 1 };
}

function fieldNamed(heading: string): ClaimField | null {
  const read = heading.toLowerCase().replace(/[^\p{L}]/gu, "");
  return claimFields.find((field) => headings[field].includes(read)) ?? null;
}

function pastedClaim(
  cells: readonly string[],
  columns: PastedLayout["columns"],
  { row, id }: Readonly<{ row: number; id: string }>,
): PastedClaim {
  const cell = (field: ClaimField): string => {
    const at = columns.indexOf(field);
    return at < 0 ? "" : (cells[at] ?? "").trim();
  };
  const claim: ClaimText = {
    id,
    property: matchProperty(cell("property")) ?? cell("property"),
    figure: cell("figure"),
    method: matchMethod(cell("method")) ?? cell("method"),
    condition: cell("condition") === "" ? "not stated" : cell("condition"),
    evidence: cell("evidence") === "" ? "stated" : (matchEvidence(cell("evidence")) ?? cell("evidence")),
    document: cell("document"),
    page: cell("page"),
    words: cell("words"),
    note: cell("note"),
    edition: cell("edition"),
    date: cell("date"),
    laboratory: cell("laboratory"),
    accreditation: matchAccreditation(cell("accreditation")) ?? cell("accreditation"),
    build: matchTestedBuild(cell("build")) ?? cell("build"),
    testField: cell("testField"),
    fieldCount: cell("fieldCount"),
    spread: cell("spread"),
  };
  return { row, claim, problems: [...problemsOf(claim), ...cellsBeyond(cells, columns)] };
}

function problemsOf(claim: ClaimText): readonly CellProblem[] {
  const parsed = claimSchema.safeParse(claim);
  if (parsed.success) return [];
  return parsed.error.issues.map(({ path, message }) => ({
    field: claimFields.find((field) => field === path[0]) ?? "row",
    message,
  }));
}

function cellsBeyond(cells: readonly string[], columns: PastedLayout["columns"]): readonly CellProblem[] {
  const beyond = cells.slice(columns.length).filter((cell) => cell.trim() !== "");
  if (beyond.length === 0) return [];
  const read = beyond.map((cell) => `“${cell.trim()}”`).join(", ");
  return [{ field: "row", message: `The row has more cells than the table has columns; ${read} was not read.` }];
}
