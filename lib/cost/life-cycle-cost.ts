import {
  type Figure,
  figureFromInterval,
  known,
  listed,
  type Shortfall,
  unknown,
  type Working,
  type WorkingInput,
} from "#lib/figure";
import { onFirstReading, workedOutOnReading } from "#lib/once";
import { type CurrencyCode, currencies, type DimensionName, formatValue, type In, measured } from "#lib/quantity";
import { type CashFlows, cashFlows } from "./cash-flows";
import type { CostCategory } from "./categories";
import { type CategoryEntry, type CostEntry, categoryEntries, costEntries, summedPresentValue } from "./cost-entries";
import { studyYearsOf } from "./cost-line-kind";
import { discountRate, rateOfMoney } from "./discount-rate";
import {
  costPerAreaYear,
  costPerHour,
  equivalentAnnualCost,
  equivalentAnnualCostOfService,
} from "./equivalent-annual-cost";
import { type ForeignPrice, foreignPrices } from "./foreign-prices";
import { inCurrency } from "./in-currency";
import type { LineOrigin } from "./levelling/levelled-line";
import {
  annualWorking,
  baseDateWorking,
  type LinesInWords,
  linesInWords,
  presentValueWorking,
  shareWorking,
} from "./life-cycle-working";
import type { CostConventions, CostStream, GivenBy, PriceLine } from "./model";
import { flowPresentValue } from "./present-value";

/** What a life-cycle cost depends on besides the prices. The area is in m²; hours are null where the brief has none. */
export type LifeCycleSetting = Readonly<{
  bid: string;
  area: In<"m²">;
  hoursPerYear: In<"h/year"> | null;
  conventions: CostConventions;
  /** Where the lines come from that were not entered with the bid, by id. */
  origins?: ReadonlyMap<string, LineOrigin>;
  /** The owner’s own alternative is priced by the owner alone; a bid by its bidder, or not at all. */
  pricedBy?: "bid" | "owner";
  /** What is lacking without a figure; the cost is then at least what it says. */
  lacking?: readonly string[];
}>;

/** What a bid costs over the study. Figures are in cents that are not rounded; entries also hold the cents as shown. */
export type LifeCycleCost = Readonly<{
  presentValue: Figure<"money">;
  /** All that is paid at the base date, owner's estimates included. */
  priceAtBaseDate: Figure<"money">;
  /** The bidder's own prices at the base date and nothing else. */
  priceAsBid: Figure<"money">;
  /** For one year. */
  equivalentAnnualCost: Figure<"money">;
  perHour: Figure<"moneyPerTime">;
  /** For one year. */
  perAreaYear: Figure<"moneyPerArea">;
  /** The present value at each of the comparison rates. */
  atRates: readonly Readonly<{ rate: number; presentValue: Figure<"money"> }>[];
  entries: readonly CostEntry[];
  categories: readonly CategoryEntry[];
  /** What is paid in each year of the study, in all and by category. */
  yearly: CostStream;
  yearlyByCategory: Readonly<Record<CostCategory, CostStream>>;
}>;

/** Real rates at which a total is always shown beside the one at the project's own rate. @source common practice, no source */
export const comparisonRates = [0, 0.03, 0.07] as const;

const noPrice: Shortfall = { kind: "not-claimed", what: "any price of its own" };

/**
 * Life-cycle cost of one bid. A bid without a price of its own gets unknown figures: owner's estimates alone would make
 * it look cheap. Its entries are listed all the same.
 * @throws RangeError if the area is not above 0
 * @source 10 CFR 436.16 for discounting and for the groups of cost
 */
export function lifeCycleCost(lines: readonly PriceLine[], setting: LifeCycleSetting): LifeCycleCost {
  const { area, conventions, hoursPerYear, lacking = [] } = setting;
  const { timing, currency } = conventions;
  const realRate = conventions.realRate.value;
  const flows = cashFlows(lines, setting);
  const entries = costEntries(flows.flows, { rate: discountRate(conventions), timing });
  const total = summedPresentValue(entries);
  const annual = equivalentAnnualCost(total, realRate, conventions.studyPeriod.years);
  const annualOfService = equivalentAnnualCostOfService(total, realRate, studyYearsOf(conventions));

  const parts = onFirstReading(() => linesInWords(lines, setting));
  const inAll = paidAtBaseDate(flows, ["bid", "owner-estimate"], parts);
  const asBid = paidAtBaseDate(flows, ["bid"], parts);
  const foreign = foreignPrices(lines, currency);
  const isPriced = lines.some(({ givenBy }) => givenBy === "bid" || setting.pricedBy === "owner");
  const certain = <D extends DimensionName>(dimension: D, value: number, working: () => Working): Figure<D> => {
    if (foreign.length > 0) return unknown(dimension, otherCurrency(foreign, currency));
    if (!isPriced) return unknown(dimension, noPrice);
    return inCurrency(known(dimension, measured(dimension, value), working), currency);
  };
  const figure = <D extends DimensionName>(dimension: D, value: number, working: () => Working): Figure<D> => {
    if (lacking.length === 0 || foreign.length > 0 || !isPriced) return certain(dimension, value, working);
    const interval = { low: measured(dimension, value), high: measured(dimension, Number.POSITIVE_INFINITY) };
    return inCurrency(
      figureFromInterval(dimension, interval, () => withoutFigures(working(), lacking)),
      currency,
    );
  };
  const totalAt = (other: number) => {
    const discounting = { rate: rateOfMoney(other, conventions), timing };
    return flows.flows.reduce((sum, { flow }) => sum + flowPresentValue(flow, discounting), 0);
  };

  const atRates = () =>
    comparisonRates.map((other) => ({
      rate: other,
      presentValue: figure("money", totalAt(other), () =>
        presentValueWorking(parts(), setting, formatValue("fraction", measured("fraction", other), "us")),
      ),
    }));

  const cost = {
    presentValue: figure("money", total, () => presentValueWorking(parts(), setting, conventions.realRate.asEntered)),
    priceAtBaseDate: figure("money", inAll.cents, inAll.working),
    priceAsBid: certain("money", asBid.cents, asBid.working),
    equivalentAnnualCost: figure("money", annual, () => annualWorking(total, setting)),
    perHour:
      hoursPerYear === null || hoursPerYear <= 0
        ? unknown("moneyPerTime", { kind: "missing-input", what: "the hours of use a year, above 0" })
        : figure(
            "moneyPerTime",
            measured("moneyPerTime", costPerHour(annualOfService, hoursPerYear) / 100, "$/h"),
            () => shareWorking("hour", annualOfService, hoursInput(hoursPerYear), conventions),
          ),
    perAreaYear: figure("moneyPerArea", costPerAreaYear(annual, area), () =>
      shareWorking("area and year", annual, areaInput(area), conventions),
    ),
    entries,
    categories: categoryEntries(entries),
    yearly: flows.total,
    yearlyByCategory: flows.byCategory,
  };
  return workedOutOnReading(cost, { atRates });
}

const otherCurrency = (foreign: readonly ForeignPrice[], currency: CurrencyCode): Shortfall => ({
  kind: "missing-input",
  what: `prices in ${currencies[currency].label}: ${listed(foreign.map(({ label, text }) => `“${label}” is written as “${text}”`))}`,
});

/** How a cost comes about that is a lower bound, because something has a price that nobody knows. */
const withoutFigures = (working: Working, lacking: readonly string[]): Working => ({
  ...working,
  assumptions: [...working.assumptions, `No figure stands for ${listed(lacking)} yet, so the cost is at least this.`],
});

/** What is paid in year 0 on the word of some givers, and how it comes about. */
function paidAtBaseDate({ flows }: CashFlows, givers: readonly GivenBy[], parts: () => LinesInWords) {
  const paid = flows.filter(({ flow }) => givers.includes(flow.givenBy) && flow.stream[0] !== 0);
  const cents = paid.reduce((sum, { flow }) => sum + (flow.stream[0] ?? 0), 0);
  return { cents, working: () => baseDateWorking([...new Set(paid.map(({ line }) => line))], parts()) };
}

const hoursInput = (hours: In<"h/year">): WorkingInput => ({
  label: "Hours of use a year",
  text: formatValue("yearlyUse", hours, "us"),
  from: { kind: "brief", field: "use.hoursPerYear" },
});

const areaInput = (area: In<"m²">): WorkingInput => ({
  label: "Area of the field",
  text: `${formatValue("area", area, "us")} (${formatValue("area", area, "metric")})`,
  from: { kind: "figure", figure: "fieldArea" },
});
