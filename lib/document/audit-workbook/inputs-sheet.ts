import type { WriteSheet } from "hucre/xlsx";
import { amountText } from "#lib/cost";
import type { Evaluation, Project } from "#lib/evaluation";
import { explainShortfall, type Figure } from "#lib/figure";
import type { AuditLine, AuditLines } from "./audit-lines";
import { conventionCells, type NamedCell } from "./convention-cells";
import { fixed, Laid } from "./laid";
import { inputsSheet, type LineColumn, lineColumn, lineHeadings, lineWidths, words } from "./line-columns";
import { kindWords, lineRow, roleWords } from "./line-row";
import { names } from "./names";

/** Where on the sheet “Inputs” other sheets find what they need. */
export type InputPlaces = Readonly<{
  named: readonly NamedCell[];
  rowOf: (ref: string) => number;
  /** All lines of one column. */
  span: (key: LineColumn) => string;
  /** Cells of what is costed, by its key. */
  costed: (key: string, column: CostedColumn) => string;
}>;

const costedColumns = [
  "key",
  "label",
  "system",
  "hours",
  "currency",
  "ownCurrency",
  "because",
  "priced",
  "ownPriced",
  "open",
] as const;
export type CostedColumn = (typeof costedColumns)[number];
const costedHeadings = [
  "Bid",
  "Bidder",
  "System",
  "Hours of use a year",
  "All prices in the currency of the project",
  "The same for the bidder’s own prices",
  "If not, why",
  "Has a price that makes it count",
  "Has a price of the bidder",
  "Items of scope without a figure",
];

export type InputsSetting = Readonly<{
  project: Project;
  evaluation: Evaluation;
  lines: AuditLines;
  levellingOpen: (key: string) => string | null;
}>;

/** The sheet on which everything that can be changed stands. */
export function inputsPage({
  project,
  evaluation,
  lines,
  levellingOpen,
}: InputsSetting): Readonly<{ sheet: WriteSheet; places: InputPlaces }> {
  const laid = new Laid(inputsSheet);
  const { area, currency } = shown(project, evaluation);
  laid.text(1, 1, "Inputs", "title");
  laid.text(2, 1, "Yellow cells may be changed; every other sheet follows.", "note");
  const { next, named } = conventionCells(laid, project.brief, area, 4);
  const costedHead = next + 2;
  laid.text(next + 1, 1, "What is costed", "section");
  laid.headings(costedHead, costedHeadings);
  const costedRow = new Map(lines.costed.map(({ key }, index) => [key, costedHead + 1 + index]));
  const linesHead = costedHead + lines.costed.length + 4;
  const first = linesHead + 1;
  const last = linesHead + Math.max(1, lines.lines.length);
  const rows = new Map(lines.lines.map(({ ref }, index) => [ref, first + index]));
  const rowOf = (ref: string): number => {
    const row = rows.get(ref);
    if (row === undefined) throw new RangeError(`no price line ${ref}`);
    return row;
  };
  const span = (key: LineColumn) => laid.span([first, lineColumn(key)], [last, lineColumn(key)]);

  for (const { key, label, system, kind, ownHours } of lines.costed) {
    const row = costedRow.get(key) ?? 0;
    const cost = evaluation.bids.find(({ letter }) => letter === key)?.cost ?? evaluation.baseAlternative;
    const foreign = [cost?.presentValue, cost?.priceAsBid].map(foreignReason);
    laid.text(row, 1, key);
    laid.text(row, 2, label);
    laid.text(row, 3, system);
    if (ownHours === null) laid.formula(row, 4, names.hours, "workedNumber");
    else laid.number(row, 4, ownHours, "inputNumber");
    laid.text(row, 5, foreign[0] === null ? words.yes : "no", "inputText");
    laid.text(row, 6, foreign[1] === null ? words.yes : "no", "inputText");
    laid.text(row, 7, foreign[0] ?? foreign[1] ?? "");
    const counted = (flag: "levelled" | "inBid", given: string) =>
      `COUNTIFS(${span("costed")},${fixed(row, 1)},${span(flag)},1${given})`;
    const byBid = `,${span("givenBy")},"${words.bid}"`;
    laid.formula(row, 8, counted("levelled", kind === "bid" ? byBid : ""), "workedYear");
    laid.formula(row, 9, counted("inBid", byBid), "workedYear");
    const open = levellingOpen(key);
    if (open === null) laid.number(row, 10, 0, "inputYear");
    else laid.formula(row, 10, open, "workedYear");
  }

  laid.text(linesHead - 1, 1, "Price lines that count", "section");
  laid.headings(linesHead, lineHeadings);
  const beside = ({ costed, levelled }: AuditLine, other: string): number => {
    const asBid = levelled ? undefined : rows.get(`${costed}:${other}:as-bid`);
    return asBid ?? rowOf(`${costed}:${other}`);
  };
  for (const line of lines.lines) lineRow(laid, rowOf(line.ref), line, { rowOf, beside, span, area, currency });
  const idleHead = last + 3;
  laid.text(idleHead - 1, 1, "Price lines that do not count, and why. They are in no sum.", "section");
  laid.headings(idleHead, [
    "Line",
    "What for",
    "Bid",
    "Why it does not count",
    "As entered",
    "Place in the bid",
    "How it is paid",
  ]);
  for (const [index, { costed, line, because }] of lines.idle.entries()) {
    const texts = [`${costed}:${line.id}`, line.label, costed, because, amountText(line.amount, area, currency)];
    for (const [column, text] of [...texts, roleWords(line), kindWords(line)].entries())
      laid.text(idleHead + 1 + index, column + 1, text);
  }
  return {
    sheet: laid.sheet({ widths: lineWidths, frozen: { rows: 2, columns: 2 } }),
    places: {
      named,
      rowOf,
      span,
      costed: (key, column) => laid.at(costedRow.get(key) ?? 0, costedColumns.indexOf(column) + 1),
    },
  };
}

const foreignReason = (figure: Figure | undefined): string | null =>
  figure?.kind === "unknown" && figure.because.kind === "missing-input" ? explainShortfall(figure.because) : null;

function shown({ brief }: Project, { area }: Evaluation) {
  if (area.kind !== "known") throw new RangeError("the area of a field is one number: its schema let another through");
  return { area: area.value, currency: brief.money.currency };
}
