import type { WriteSheet } from "hucre/xlsx";
import { amountText, comparisonRates } from "#lib/cost";
import type { Evaluation, Project } from "#lib/evaluation";
import { explainShortfall, type Figure } from "#lib/figure";
import { currencies, inUnit, unitFor } from "#lib/quantity";
import type { AuditLine, AuditLines } from "./audit-lines";
import { fixed, Laid } from "./laid";
import { inputsSheet, type LineColumn, lineColumn, lineHeadings, lineWidths, words } from "./line-columns";
import { kindWords, lineRow, roleWords } from "./line-row";
import { comparisonRateName, names } from "./names";
import { fifteenDigits } from "./written-amount";

/** Where on the sheet “Inputs” other sheets find what they need. */
export type InputPlaces = Readonly<{
  named: readonly Readonly<{ name: string; range: string }>[];
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
  laid.text(1, 1, "Inputs", "title");
  laid.text(2, 1, "Yellow cells may be changed; every other sheet follows.", "note");
  const { next, named } = conventions(laid, project, evaluation, 4);
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
  const { area, currency } = shown(project, evaluation);
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

type Asked = Readonly<{ label: string; name?: string; note?: string }> &
  Readonly<
    | { text: string; choices?: readonly string[] }
    | { number: number | null; style: "inputNumber" | "inputShare" | "inputYear" }
    | { formula: string; style: "workedShare" | "workedNumber" }
  >;

function conventions(laid: Laid, project: Project, evaluation: Evaluation, from: number) {
  const { name, owner, use, money } = project.brief;
  const { area } = shown(project, evaluation);
  const years = money.studyPeriod.years;
  const share = (rate: Readonly<{ value: number }> | null) => (rate === null ? null : fifteenDigits(rate.value));
  const asked: readonly Asked[] = [
    { label: "Project", text: name },
    { label: "Owner", text: owner },
    { label: "Base date", text: money.baseDate, note: "Prices are of this day; later costs are discounted to it." },
    { label: "Currency", text: money.currency, note: currencies[money.currency].label },
    {
      ...{ label: "Money", name: names.money, text: money.money, choices: ["constant", "current"] },
      note: "“constant”: without inflation. “current”: inflation is in the flows and in the rate.",
    },
    {
      ...{ label: "Rate is given as", name: names.rateGivenAs, choices: ["real", "nominal"] },
      text: money.nominalRate === null ? "real" : "nominal",
    },
    {
      ...{ label: "Real rate a year, as given", name: names.realGiven, style: "inputShare" },
      ...{ number: money.nominalRate === null ? share(money.realRate) : null, note: money.realRate.asEntered },
    },
    {
      ...{ label: "Nominal rate a year, as given", name: names.nominalGiven, style: "inputShare" },
      ...{ number: share(money.nominalRate), note: money.nominalRate?.asEntered ?? "not given" },
    },
    {
      ...{ label: "General inflation a year", name: names.inflation, style: "inputShare" },
      ...{ number: share(money.inflation), note: money.inflation?.asEntered ?? "not given; an empty cell counts as 0" },
    },
    {
      ...{ label: "Real rate a year", name: names.realRate, style: "workedShare" },
      formula: `IF(${names.rateGivenAs}="nominal",(${names.nominalGiven}-${names.inflation})/(1+${names.inflation}),${names.realGiven})`,
      note: "(1 + nominal) = (1 + real) × (1 + inflation)",
    },
    {
      ...{ label: "Rate that discounts the flows", name: names.discountRate, style: "workedShare" },
      formula: atMoney(names.realRate),
      note: "The real rate for constant money, the nominal one for current money.",
    },
    {
      ...{ label: "Study period, years", name: names.studyYears, number: years, style: "inputYear" },
      note: `From the base date. It may be made shorter; this file has columns up to year ${years}.`,
    },
    {
      ...{ label: "Start of service, years after", name: names.serviceStart, style: "inputYear" },
      ...{ number: money.serviceStart.years, note: "Lives and what recurs count from here." },
    },
    {
      ...{
        label: "When yearly costs fall",
        name: names.timing,
        text: money.timing,
        choices: ["end-of-year", "mid-year"],
      },
      note: "Single payments always fall at the end of their year.",
    },
    {
      ...{ label: "Area of the field, ft²", name: names.squareFeet, style: "inputNumber" },
      number: fifteenDigits(inUnit("area", area, unitFor("area", "us"))),
    },
    {
      ...{ label: "Area of the field, m²", name: names.squareMetres, style: "workedNumber" },
      ...{ formula: `${names.squareFeet}*0.09290304`, note: "1 ft² = 0.09290304 m², exactly" },
    },
    {
      ...{ label: "Hours of use a year", name: names.hours, style: "inputNumber" },
      number: fifteenDigits(use.hoursPerYear.value),
    },
    ...comparisonRates.map(
      (rate, index): Asked => ({
        ...{ label: `Real rate to compare with, ${index + 1}`, name: comparisonRateName(index) },
        ...{ number: rate, style: "inputShare" },
      }),
    ),
  ];
  laid.text(from - 1, 1, "Conventions", "section");
  const named: { name: string; range: string }[] = [];
  for (const [index, one] of asked.entries()) {
    const row = from + index;
    laid.text(row, 1, one.label, "asked");
    if ("formula" in one) laid.formula(row, 2, one.formula, one.style);
    else if ("text" in one) laid.text(row, 2, one.text, one.choices === undefined ? "text" : "inputText");
    else if (one.number === null) laid.empty(row, 2, one.style);
    else laid.number(row, 2, one.number, one.style);
    if (one.note !== undefined) laid.text(row, 3, one.note, "note");
    if (one.name !== undefined) named.push({ name: one.name, range: laid.at(row, 2) });
    if ("choices" in one && one.choices !== undefined)
      laid.validate({ type: "list", range: `B${row}`, formula1: `"${one.choices.join(",")}"`, showErrorMessage: true });
    if (one.name === names.studyYears)
      laid.validate({
        ...{ type: "whole", operator: "between", range: `B${row}`, formula1: "1", formula2: String(years) },
        ...{ showErrorMessage: true, errorTitle: "Study period" },
        errorMessage: `This file has columns for the years 0 to ${years}. Expected a whole number from 1 to ${years}.`,
      });
  }
  return { next: from + asked.length, named };
}

/** A real rate as it discounts the money of the conventions. */
export const atMoney = (real: string): string =>
  `IF(${names.money}="current",${real}+${names.inflation}+${real}*${names.inflation},${real})`;
