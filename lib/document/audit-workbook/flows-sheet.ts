import type { WriteSheet } from "hucre/xlsx";
import type { AuditLines } from "./audit-lines";
import { flowFormula, type LivesCells } from "./flow-formulas";
import { categoryWords, type FlowRow, flowRowsOf, partWords } from "./flow-rows";
import type { InputPlaces } from "./inputs-sheet";
import { columnName, Laid } from "./laid";
import { lineCell, words } from "./line-columns";
import { giverWords } from "./line-row";
import { firstYearColumn, flowsSheet, yearColumn, yearRow, yearsOf } from "./years";

/** A row of the yearly flows with its place. */
export type PlacedFlow = FlowRow & Readonly<{ row: number }>;

export type FlowPlaces = Readonly<{
  flows: readonly PlacedFlow[];
  /** One column over all rows, as other sheets refer to it. */
  span: (column: FlowColumn) => string;
  /** All payments of one year, as other sheets refer to them. */
  yearSpan: (year: number) => string;
  /** All years of one row, as other sheets refer to them. */
  years: (row: number) => string;
}>;

const columns = [
  "ref",
  "costed",
  "label",
  "part",
  "category",
  "givenBy",
  "from",
  "recurrence",
  "levelled",
  "asBid",
] as const;
export type FlowColumn = (typeof columns)[number];
const headings = [
  "Line",
  "Bid",
  "What for",
  "Part",
  "Category",
  "Given by",
  "Where from",
  "Recurs",
  "Counts, levelled",
  "Counts, as bid",
];

const flowColumn = (column: FlowColumn): number => columns.indexOf(column) + 1;
const widths = [30, 8, 28, 26, 24, 9, 22, 10, 9, 9];

/** Every payment of every year by formula, one row for each part of each line, with the sums of each bid below. */
export function flowsPage(
  { lines, costed }: AuditLines,
  places: InputPlaces,
  lives: (ref: string) => LivesCells | null,
  studyYears: number,
): Readonly<{ sheet: WriteSheet; places: FlowPlaces }> {
  const laid = new Laid(flowsSheet);
  laid.text(1, 1, "Yearly flows", "title");
  laid.text(
    2,
    1,
    "What is paid at the end of each year, in the money that the conventions name. A minus sign means a credit or a value that is left.",
    "note",
  );
  laid.headings(yearRow, headings);
  for (let year = 0; year <= studyYears; year += 1) laid.number(yearRow, firstYearColumn + year, year, "headingYear");
  const flows = lines.flatMap(flowRowsOf).map((flow, index): PlacedFlow => ({ ...flow, row: yearRow + 1 + index }));
  const [first, last] = [yearRow + 1, yearRow + Math.max(1, flows.length)];
  const span = (column: FlowColumn) => laid.span([first, flowColumn(column)], [last, flowColumn(column)]);
  const yearSpan = (year: number) => laid.span([first, firstYearColumn + year], [last, firstYearColumn + year]);
  for (const flow of flows) flowRow(laid, flow, places.rowOf(flow.audit.ref), lives(flow.audit.ref), studyYears);

  const sumHead = last + 3;
  laid.text(sumHead - 1, 1, "Sums of each year", "section");
  let row = sumHead;
  for (const { key, kind } of costed) {
    const kinds = kind === "bid" ? (["levelled", "asBid"] as const) : (["levelled"] as const);
    for (const flag of kinds) {
      const what = flag === "levelled" ? "all that is paid, levelled" : "the bidder’s own prices, as bid";
      for (const [column, text] of [`Sum ${key}, ${flag === "levelled" ? "levelled" : "as bid"}`, key, what].entries())
        laid.text(row, column + 1, text);
      for (let year = 0; year <= studyYears; year += 1) {
        const column = yearColumn(year);
        const block = (name: string) => `${name}$${first}:${name}$${last}`;
        const counts = block(`$${columnName(flowColumn(flag))}`);
        const sum = `SUMIFS(${block(column)},${block("$B")},$B${row},${counts},1)`;
        laid.formula(row, firstYearColumn + year, sum, "sum");
      }
      row += 1;
    }
  }
  const years = Array.from({ length: studyYears + 1 }, () => 14);
  return {
    sheet: laid.sheet({ widths: [...widths, ...years], frozen: { rows: yearRow, columns: 1 } }),
    places: { flows, span, yearSpan, years: (at) => `'${flowsSheet}'!${yearsOf(at, studyYears)}` },
  };
}

function flowRow(laid: Laid, flow: PlacedFlow, input: number, lives: LivesCells | null, studyYears: number): void {
  const { audit, part, category, givenBy, recurrence, row } = flow;
  const texts = [
    audit.ref,
    audit.costed,
    audit.line.label,
    partWords[part],
    categoryWords(category),
    giverWords(givenBy),
    audit.from,
  ];
  for (const [index, text] of [...texts, recurrence === "yearly" ? "every year" : "singly"].entries())
    laid.text(row, index + 1, text);
  laid.formula(row, flowColumn("levelled"), lineCell("levelled", input), "workedYear");
  laid.formula(row, flowColumn("asBid"), `IF($F${row}="${words.bid}",${lineCell("inBid", input)},0)`, "workedYear");
  for (let year = 0; year <= studyYears; year += 1)
    laid.formula(row, firstYearColumn + year, flowFormula(flow, input, yearColumn(year), lives), "workedFlow");
}
