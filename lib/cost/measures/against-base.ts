import { type Figure, figureFromInterval, known, type Shortfall, unknown, type Working } from "#lib/figure";
import type { In } from "#lib/quantity";
import { formatMoneyExact, formatValue, measured } from "#lib/quantity";
import { cashFlows, type LineFlow } from "../cash-flows";
import { inConstantMoney } from "../current-money";
import { inCurrency } from "../in-currency";
import type { CostConventions, PriceLine } from "../model";
import { shownCents } from "../shown-cents";
import { type Payback, payback } from "./payback";
import { adjustedRateOfReturn, groupedCost, savingsToInvestment } from "./savings";

/** What an alternative is held against another with: its lines, all of them resolved. */
export type Measured = Readonly<{ lines: readonly PriceLine[]; hoursPerYear: In<"h/year"> | null }>;

/** How a bid stands to a base alternative over the study. Money in cents at the base date. */
export type AgainstBase = Readonly<{
  /** What it is held against, in words: "natural grass", "bid B". */
  base: string;
  extraInvestment: number;
  operationSavings: number;
  /** What the base costs over the study less what the bid costs; below zero where the bid costs more. */
  netSavings: Figure<"money">;
  savingsToInvestment: Figure<"number">;
  adjustedRateOfReturn: Figure<"fraction">;
  simplePayback: Payback;
  discountedPayback: Payback;
  /** What the measures say and where they say nothing, in sentences. */
  sentences: readonly string[];
}>;

/** What the comparison depends on besides the lines. */
export type MeasureSetting = Readonly<{
  area: In<"m²">;
  conventions: CostConventions;
  base: string;
  /** Which of the two costs is only the least that it can be, as an item of scope has no figure yet. */
  open: OpenCosts;
}>;

export type OpenCosts = "neither" | "bid" | "base" | "both";

/**
 * Life-cycle measures of a bid against a base alternative, in constant money at the real rate.
 * @source NIST Handbook 135, from memory; 10 CFR 436 subpart A
 */
export function againstBase(
  bid: Measured,
  base: Measured,
  { area, conventions, base: name, open }: MeasureSetting,
): AgainstBase {
  const setting = { area, conventions: inConstantMoney(conventions) };
  const discounting = { rate: conventions.realRate.value, timing: conventions.timing };
  const years = conventions.studyPeriod.years;
  const [own, theirs] = [cashFlows(bid.lines, setting), cashFlows(base.lines, setting)];
  const [ownCost, baseCost] = [grouped(own.flows), grouped(theirs.flows)];
  const extraInvestment = ownCost.investment - baseCost.investment;
  const operationSavings = baseCost.operation - ownCost.operation;
  const ratio = savingsToInvestment(operationSavings, extraInvestment);
  const rateOfReturn = adjustedRateOfReturn(ratio, discounting.rate, years);
  const savings = theirs.total.map((cents, year) => cents - (own.total[year] ?? 0));
  const [simplePayback, discountedPayback] = [payback(savings, 0), payback(savings, discounting.rate)];
  const netSavings = operationSavings - extraInvestment;

  function grouped(flows: readonly LineFlow[]) {
    return groupedCost(
      flows.map(({ flow }) => flow),
      discounting,
    );
  }
  const money = (cents: number) => formatMoneyExact(shownCents(cents), conventions.currency);
  const working = (formula: string): Working => ({
    formula,
    inputs: [
      { label: "Extra investment", text: money(extraInvestment), from: { kind: "figure", figure: "extraInvestment" } },
      {
        label: "Savings in operation",
        text: money(operationSavings),
        from: { kind: "figure", figure: "operationSavings" },
      },
      {
        label: "Real rate a year",
        text: conventions.realRate.asEntered,
        from: { kind: "brief", field: "money.realRate" },
      },
      {
        label: "Study period",
        text: conventions.studyPeriod.asEntered,
        from: { kind: "brief", field: "money.studyPeriod" },
      },
    ],
    assumptions: [
      "Investment holds first costs, renewals, removal and what is left; operation holds upkeep and testing.",
    ],
    source: "NIST Handbook 135, from memory",
  });
  return {
    ...{ base: name, extraInvestment, operationSavings, simplePayback, discountedPayback },
    netSavings: inCurrency(
      asSureAs(open, "money", netSavings, working("net savings = savings in operation − extra investment")),
      conventions.currency,
    ),
    savingsToInvestment:
      ratio === null
        ? unknown("number", noExtra(name))
        : asSureAs(open, "number", ratio, working("ratio = savings in operation ÷ extra investment")),
    adjustedRateOfReturn:
      rateOfReturn === null
        ? unknown("fraction", ratio === null ? noExtra(name) : noSavings(name))
        : asSureAs(open, "fraction", rateOfReturn, working("rate of return = (1 + rate) × ratio^(1 ÷ years) − 1")),
    sentences: [
      ...paybackSentences(simplePayback, discountedPayback, name, years),
      ...openSentences(open, name),
      ...hoursSentences(bid.hoursPerYear, base.hoursPerYear, name),
    ],
  };
}

/**
 * What an open item costs on top makes a bid save less and earn less, and the base more, whatever group of cost it falls
 * in. With both open nothing is known.
 */
function asSureAs<D extends "money" | "number" | "fraction">(
  open: OpenCosts,
  dimension: D,
  value: number,
  working: Working,
): Figure<D> {
  const here = measured(dimension, value);
  switch (open) {
    case "neither":
      return known(dimension, here, working);
    case "bid":
      return figureFromInterval(dimension, { low: measured(dimension, Number.NEGATIVE_INFINITY), high: here }, working);
    case "base":
      return figureFromInterval(dimension, { low: here, high: measured(dimension, Number.POSITIVE_INFINITY) }, working);
    case "both":
      return unknown(dimension, {
        kind: "outside-validity",
        what: "the comparison",
        reason: "both sides have items of scope without a figure. Level these first.",
      });
  }
}

function openSentences(open: OpenCosts, base: string): readonly string[] {
  switch (open) {
    case "neither":
      return [];
    case "bid":
      return ["The bid has items without a figure, so it saves at most this and takes at least this long."];
    case "base":
      return [`For ${base} there are items without a figure, so the bid saves at least this.`];
    case "both":
      return [`The bid and ${base} have items without a figure, so nothing of this is firm.`];
  }
}

const noExtra = (base: string): Shortfall => ({
  kind: "outside-validity",
  what: "savings for each unit invested",
  reason: `the bid takes no more investment than ${base}, so there is nothing to divide by. Compare the life-cycle costs.`,
});

const noSavings = (base: string): Shortfall => ({
  kind: "outside-validity",
  what: "a rate of return",
  reason: `the bid saves nothing in operation against ${base}, so the extra investment earns nothing.`,
});

const inYears = (years: number): string => `${Number(years.toFixed(1))} years`;

function paybackSentences(simple: Payback, discounted: Payback, base: string, years: number): readonly string[] {
  if (simple.kind === "at-once")
    return [`It costs no more than ${base} at the base date, so nothing has to be paid back.`];
  if (simple.kind === "not-within-study") {
    return [`Its yearly savings against ${base} do not make up for the higher price within ${years} years.`];
  }
  const back = simple.stays ? "" : " A later payment takes the savings below that again.";
  const first = `Its yearly savings against ${base} make up for the higher price after ${inYears(simple.years)}, not discounted.${back}`;
  switch (discounted.kind) {
    case "at-once":
      return [first];
    case "not-within-study":
      return [first, `Discounted, they do not do so within ${years} years.`];
    case "after":
      return [first, `Discounted, it takes ${inYears(discounted.years)}.`];
  }
}

function hoursSentences(own: In<"h/year"> | null, base: In<"h/year"> | null, name: string): readonly string[] {
  if (own === null || base === null || own === base) return [];
  const [bidHours, baseHours] = [formatValue("yearlyUse", own, "us"), formatValue("yearlyUse", base, "us")];
  return [
    `The bid is reckoned with ${bidHours} of use and ${name} with ${baseHours}: the totals do not buy the same use. Compare the cost of an hour.`,
  ];
}
