import type { WriteSheet } from "hucre/xlsx";
import { type AlternativeCost, type BidCost, type CostCategory, comparisonRates, costCategories } from "#lib/cost";
import type { Evaluation } from "#lib/evaluation";
import { intervalOfFigure } from "#lib/figure";
import type { AuditLines, Costed } from "./audit-lines";
import type { DiscountingPlaces } from "./discounting-sheet";
import type { FlowPlaces } from "./flows-sheet";
import type { InputPlaces } from "./inputs-sheet";
import { columnName, Laid } from "./laid";
import { words } from "./line-columns";
import { comparisonRateName, names } from "./names";
import { fifteenDigits } from "./written-amount";

const totalsSheet = "Totals";

const categories = Object.keys(costCategories) as readonly CostCategory[];
/** Stands in place of a total that can't be given. */
const unknownWord = "unknown";

/** The rows with the factors, and where the totals begin. */
const rows = { study: 4, delay: 5, service: 6, head: 8 } as const;
const firstColumn = 2;

const keys = [
  "levelled",
  "presentValue",
  ...categories,
  "priceAtBaseDate",
  "equivalentAnnualCost",
  "perHour",
  "perSquareFoot",
  "perSquareMetre",
  "rate0",
  "rate1",
  "rate2",
  "asBid",
  "asBidPresentValue",
  "asBidPriceAtBaseDate",
  "asBidEquivalentAnnualCost",
  "app",
  "appPresentValue",
  "appPresentValueDifference",
  "appPriceAtBaseDate",
  "appPriceAtBaseDateDifference",
  "appAsBidPresentValue",
  "appAsBidPresentValueDifference",
] as const;
export type TotalKey = (typeof keys)[number];

const rowOf = (key: TotalKey): number => rows.head + 1 + keys.indexOf(key);

export type TotalPlaces = Readonly<{
  /** A total of a bid as other sheets refer to it. */
  of: (costed: string, key: TotalKey) => string;
}>;

type Setting = Readonly<{
  evaluation: Evaluation;
  lines: AuditLines;
  inputs: InputPlaces;
  flows: FlowPlaces;
  discounting: DiscountingPlaces;
}>;

/** What each bid costs, by formula, and beside it what the app said when the file was made. */
export function totalsPage(setting: Setting): Readonly<{ sheet: WriteSheet; places: TotalPlaces }> {
  const laid = new Laid(totalsSheet);
  const { lines } = setting;
  laid.text(1, 1, "Totals", "title");
  laid.text(
    2,
    1,
    "All totals are worked out from unrounded flows; cells show cents. Where a bid lacks a figure for an item of scope, its levelled totals are at least what they say.",
    "note",
  );
  const worth = (years: string) =>
    `IF(${names.realRate}=0,${years},(1-(1+${names.realRate})^(-${years}))/${names.realRate})`;
  laid.text(rows.study, 1, "Uniform present worth of the study, real rate", "asked");
  laid.formula(rows.study, 2, worth(names.studyYears), "workedFactor");
  laid.text(rows.delay, 1, "The same of the years before service", "asked");
  laid.formula(rows.delay, 2, worth(names.serviceStart), "workedFactor");
  laid.text(rows.service, 1, "Uniform present worth of the years of service", "asked");
  laid.formula(rows.service, 2, `$B$${rows.study}-$B$${rows.delay}`, "workedFactor");
  laid.headings(rows.head, [
    "",
    ...lines.costed.map(({ key, kind, label }) => (kind === "bid" ? `Bid ${key}` : label)),
  ]);
  for (const [index, label] of labels().entries())
    laid.text(rows.head + 1 + index, 1, label, sectionKeys.has(keys[index] ?? "levelled") ? "section" : "asked");
  for (const index of comparisonRates.keys())
    laid.formula(
      rowOf(`rate${index}` as TotalKey),
      1,
      `"Present value at "&ROUND(100*${comparisonRateName(index)},4)&" % real"`,
      "workedText",
    );
  for (const [index, costed] of lines.costed.entries()) column(laid, firstColumn + index, costed, setting);
  const columnOf = new Map(lines.costed.map(({ key }, index) => [key, firstColumn + index]));
  return {
    sheet: laid.sheet({ widths: [46, ...lines.costed.map(() => 20)], frozen: { rows: rows.head, columns: 1 } }),
    places: { of: (costed, key) => laid.at(rowOf(key), columnOf.get(costed) ?? 0) },
  };
}

const sectionKeys: ReadonlySet<TotalKey> = new Set(["levelled", "asBid", "app"]);

const labels = (): readonly string[] => [
  "Levelled: with plugs, links and the owner’s estimates",
  "Present value",
  ...categories.map((category) => `of it ${costCategories[category].label}`),
  "Price at the base date",
  "Equivalent annual cost",
  "Cost of an hour of use",
  "Annual cost of a square foot",
  "Annual cost of a square metre",
  ...comparisonRates.map(() => ""),
  "As bid: the bidder’s own prices alone",
  "Present value, as bid",
  "Price at the base date, as bid",
  "Equivalent annual cost, as bid",
  "As the app showed it when this file was made",
  "Present value, app",
  "This sheet less the app",
  "Price at the base date, app",
  "This sheet less the app",
  "Present value as bid, app",
  "This sheet less the app",
];

function column(laid: Laid, at: number, costed: Costed, { inputs, flows, discounting, evaluation }: Setting): void {
  const { key, kind } = costed;
  const here = (row: TotalKey) => `${columnName(at)}$${rowOf(row)}`;
  const input = (name: Parameters<InputPlaces["costed"]>[1]) => inputs.costed(key, name);
  const sum = (of: string, flag: "levelled" | "asBid", category?: CostCategory) =>
    `SUMIFS(${of},${flows.span("costed")},${input("key")},${flows.span(flag)},1${
      category === undefined ? "" : `,${flows.span("category")},"${costCategories[category].label}"`
    })`;
  const whereKnown = (priced: "priced" | "ownPriced", currency: "currency" | "ownCurrency", formula: string) =>
    `IF(AND(${input(priced)}>0,${input(currency)}="${words.yes}"),${formula},"${unknownWord}")`;
  const levelled = (row: TotalKey, formula: string, style: "sum" | "workedMoney" = "workedMoney") =>
    laid.formula(rowOf(row), at, whereKnown("priced", "currency", formula), style);
  const open = `${input("open")}>0`;
  laid.formula(rowOf("levelled"), at, `IF(${open},"at least","")`, "workedText");
  levelled("presentValue", sum(discounting.span(null), "levelled"), "sum");
  for (const category of categories) levelled(category, sum(discounting.span(null), "levelled", category));
  levelled("priceAtBaseDate", sum(flows.yearSpan(0), "levelled"), "sum");
  levelled("equivalentAnnualCost", `${here("presentValue")}/$B$${rows.study}`, "sum");
  levelled("perHour", `${here("presentValue")}/$B$${rows.service}/${input("hours")}`);
  levelled("perSquareFoot", `${here("equivalentAnnualCost")}/${names.squareFeet}`);
  levelled("perSquareMetre", `${here("equivalentAnnualCost")}/${names.squareMetres}`);
  for (const index of comparisonRates.keys())
    levelled(`rate${index}` as TotalKey, sum(discounting.span(index), "levelled"));
  if (kind !== "bid") {
    if (evaluation.baseAlternative !== null) asTheApp(laid, at, evaluation.baseAlternative, here);
    return;
  }
  const asBid = (row: TotalKey, formula: string) =>
    laid.formula(rowOf(row), at, whereKnown("ownPriced", "ownCurrency", formula), "sum");
  asBid("asBidPresentValue", sum(discounting.span(null), "asBid"));
  asBid("asBidPriceAtBaseDate", sum(flows.yearSpan(0), "asBid"));
  asBid("asBidEquivalentAnnualCost", `${here("asBidPresentValue")}/$B$${rows.study}`);
  const bid = evaluation.bids.find(({ letter }) => letter === key);
  if (bid !== undefined) asTheApp(laid, at, bid.cost, here);
}

function asTheApp(laid: Laid, at: number, cost: BidCost | AlternativeCost, here: (row: TotalKey) => string): void {
  const shown = [
    ["appPresentValue", "presentValue", cost.presentValue],
    ["appPriceAtBaseDate", "priceAtBaseDate", cost.priceAtBaseDate],
    ...("asBid" in cost ? ([["appAsBidPresentValue", "asBidPresentValue", cost.asBid.presentValue]] as const) : []),
  ] as const;
  for (const [row, own, figure] of shown) {
    const cents = intervalOfFigure(figure)?.low;
    if (cents === undefined) laid.text(rowOf(row), at, unknownWord);
    else laid.number(rowOf(row), at, fifteenDigits(cents / 100), "givenMoney");
    const isBoth = `AND(ISNUMBER(${here(own)}),ISNUMBER(${here(row)}))`;
    laid.formula(rowOf(`${row}Difference`), at, `IF(${isBoth},ROUND(${here(own)}-${here(row)},2),"–")`, "workedMoney");
  }
}
