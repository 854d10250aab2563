import { comparisonRates } from "#lib/cost";
import type { Brief } from "#lib/evaluation";
import { currencies, type In, inUnit, unitFor } from "#lib/quantity";
import type { Laid } from "./laid";
import { comparisonRateName, names } from "./names";
import { fifteenDigits } from "./written-amount";

/** A cell with a name that formulas use. */
export type NamedCell = Readonly<{ name: string; range: string }>;

type Asked = Readonly<{ label: string; name?: string; note?: string }> &
  Readonly<
    | { text: string; choices?: readonly string[] }
    | { number: number | null; style: "inputNumber" | "inputShare" | "inputYear" }
    | { formula: string; style: "workedShare" | "workedNumber" }
  >;

/**
 * Writes the conventions of the costs as typed cells, from a row on.
 * @returns the row after them, and the names of the cells
 */
export function conventionCells(
  laid: Laid,
  { name, owner, use, money }: Brief,
  area: In<"m²">,
  from: number,
): Readonly<{ next: number; named: readonly NamedCell[] }> {
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
    { label: "Where the rate comes from", text: money.rateSource.trim() || "not named" },
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
  const named: NamedCell[] = [];
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
