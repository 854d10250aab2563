import type { WriteSheet } from "hucre/xlsx";
import { comparisonRates } from "#lib/cost";
import { atMoney } from "./convention-cells";
import { partWords } from "./flow-rows";
import type { FlowPlaces } from "./flows-sheet";
import { Laid } from "./laid";
import { comparisonRateName, names } from "./names";
import { discountingSheet, factorRows, firstYearColumn, yearColumn, yearRow, yearsOf } from "./years";

/** The columns of present values: at the rate of the project, then at each comparison rate. */
const presentValueColumn = 5;

export type DiscountingPlaces = Readonly<{
  /** Present values of all rows; rate null is that of the project, a number that comparison rate, from 0. */
  span: (rate: number | null) => string;
  /** What the flows of the line are worth together that a cell names, at the rate of the project. */
  ofLine: (refCell: string) => string;
}>;

/** Factors of each year by formula, and the present value of every row of the yearly flows. */
export function discountingPage(
  flows: FlowPlaces,
  studyYears: number,
): Readonly<{ sheet: WriteSheet; places: DiscountingPlaces }> {
  const laid = new Laid(discountingSheet);
  laid.text(1, 1, "Discounting", "title");
  laid.text(2, 1, "Factors of each year, then what each row of the yearly flows is worth at the base date.", "note");
  laid.headings(yearRow, ["Factor", "", "", "", "Rate a year"]);
  for (let year = 0; year <= studyYears; year += 1) laid.number(yearRow, firstYearColumn + year, year, "headingYear");
  factors(laid, studyYears);
  const comparison = comparisonRates.map((_, index) => index);
  const head = factorRows.firstComparison + 2 * comparison.length + 3;
  laid.text(head - 1, 1, "Present values", "section");
  laid.headings(head, ["Line", "Bid", "What for", "Part", "Present value at the rate of the project"]);
  for (const index of comparison)
    laid.formula(
      head,
      presentValueColumn + 1 + index,
      `"At "&ROUND(100*${comparisonRateName(index)},4)&" % real"`,
      "heading",
    );
  const first = head + 1;
  const last = head + Math.max(1, flows.flows.length);
  for (const [index, { audit, part, recurrence, row: flowRow }] of flows.flows.entries()) {
    const row = first + index;
    for (const [column, text] of [audit.ref, audit.costed, audit.line.label, partWords[part]].entries())
      laid.text(row, column + 1, text);
    const isYearly = recurrence === "yearly";
    const worth = (factorRow: number) => `SUMPRODUCT(${flows.years(flowRow)},${yearsOf(factorRow, studyYears)})`;
    laid.formula(
      row,
      presentValueColumn,
      worth(isYearly ? factorRows.discountYearly : factorRows.discountSingle),
      "workedMoney",
    );
    for (const rate of comparison)
      laid.formula(
        row,
        presentValueColumn + 1 + rate,
        worth(factorRows.firstComparison + 2 * rate + (isYearly ? 1 : 0)),
        "workedMoney",
      );
  }
  const column = (rate: number | null) => presentValueColumn + (rate === null ? 0 : 1 + rate);
  const span = (rate: number | null) => laid.span([first, column(rate)], [last, column(rate)]);
  return {
    sheet: laid.sheet({
      widths: [44, 8, 28, 30, 18, 18, 18, 18, 3, 3, ...Array.from({ length: studyYears + 1 }, () => 10)],
      frozen: { rows: yearRow, columns: 1 },
    }),
    places: { span, ofLine: (refCell) => `SUMIFS(${span(null)},${laid.span([first, 1], [last, 1])},${refCell})` },
  };
}

function factors(laid: Laid, studyYears: number): void {
  const [money, infl] = [names.money, names.inflation];
  const isMid = `${names.timing}="mid-year"`;
  const inStudy = (head: string, factor: string) => `IF(${head}>${names.studyYears},0,${factor})`;
  const row = (at: number, label: string, rate: string | null, formula: (head: string) => string) => {
    laid.text(at, 1, label, "asked");
    if (rate !== null) laid.formula(at, 5, rate, "workedShare");
    for (let year = 0; year <= studyYears; year += 1)
      laid.formula(
        at,
        firstYearColumn + year,
        inStudy(`${yearColumn(year)}$${yearRow}`, formula(`${yearColumn(year)}$${yearRow}`)),
        "workedFactor",
      );
  };
  const inflated = (exponent: string) => `IF(${money}="current",(1+${infl})^(${exponent}),1)`;
  row(factorRows.levelSingle, "Level of prices, paid singly (0 after the study)", null, inflated);
  row(factorRows.levelYearly, "Level of prices, paid every year (0 after the study)", null, (head) =>
    inflated(`IF(${head}=0,0,${head}-IF(${isMid},0.5,0))`),
  );
  const pair = (at: number, label: string, rate: string) => {
    const single = (rateRow: number) => (head: string) => `(1+$E$${rateRow})^(-${head})`;
    row(at, `Discount factor, paid singly, ${label}`, rate, single(at));
    row(
      at + 1,
      `Discount factor, paid every year, ${label}`,
      rate,
      (head) => `${single(at + 1)(head)}*IF(${isMid},(1+$E$${at + 1})^0.5,1)`,
    );
  };
  pair(factorRows.discountSingle, "rate of the project", names.discountRate);
  for (const index of comparisonRates.keys()) {
    pair(factorRows.firstComparison + 2 * index, `comparison rate ${index + 1}`, atMoney(comparisonRateName(index)));
  }
}
