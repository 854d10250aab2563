import type { Working, WorkingInput } from "#lib/figure";
import { formatMoneyExact, type In } from "#lib/quantity";
import { amountText } from "./amount";
import type { LinePrice } from "./cost-line-kind";
import { assumptionsOf, pricesOf } from "./cost-lines";
import type { CostConventions, PriceLine, Timing } from "./model";
import { shownCents } from "./shown-cents";

/** What the workings of a life-cycle cost speak of. */
export type WorkingSetting = Readonly<{ bid: string; area: In<"m²">; conventions: CostConventions }>;

const timingWords: Readonly<Record<Timing, string>> = {
  "end-of-year": "Every payment falls at the end of its year.",
  "mid-year": "What recurs every year falls in the middle of its year; single payments fall at its end.",
};

/** What price lines bring to a working. Told once and used at every rate. */
export type LinesInWords = Readonly<{
  inputs: readonly WorkingInput[];
  /** The main price of each line. */
  main: ReadonlyMap<PriceLine, WorkingInput>;
  assumptions: readonly string[];
}>;

export function linesInWords(lines: readonly PriceLine[], setting: WorkingSetting): LinesInWords {
  const told = lines.map((line) => ({ line, inputs: lineInputs(line, setting) }));
  return {
    inputs: told.flatMap(({ inputs }) => inputs),
    main: new Map(told.map(({ line, inputs: [main] }) => [line, main])),
    assumptions: lines.flatMap((line) => assumptionsOf(line, setting.conventions.studyPeriod.years)),
  };
}

/** How a present value comes about at a real rate, given as text: "3 %". */
export function presentValueWorking(lines: LinesInWords, setting: WorkingSetting, rate: string): Working {
  const { conventions } = setting;
  return {
    formula: "present value = Σ payment ÷ (1 + rate)^year",
    inputs: [
      ...lines.inputs,
      { label: "Real rate a year", text: rate, from: { kind: "brief", field: "money.realRate" } },
      studyInput(conventions),
    ],
    assumptions: [
      `Money keeps its value of ${conventions.baseDate}: general inflation is left out of the prices and of the rate.`,
      timingWords[conventions.timing],
      ...lines.assumptions,
    ],
    source: "derived; discounting as in 10 CFR 436.16",
  };
}

/** How a price at the base date comes about from the lines that are paid then. */
export const baseDateWorking = (lines: readonly PriceLine[], { main }: LinesInWords): Working => ({
  formula: "price at the base date = Σ payments in year 0",
  inputs: lines.flatMap((line) => main.get(line) ?? []),
  assumptions: [],
  source: "derived",
});

/** How an equivalent annual cost comes about from a present value in cents. */
export const annualWorking = (presentValue: number, { conventions }: WorkingSetting): Working => ({
  formula: "equivalent annual cost = present value ÷ uniform present worth of the rate and the years",
  inputs: [
    {
      label: "Present value",
      text: formatMoneyExact(shownCents(presentValue)),
      from: { kind: "figure", figure: "presentValue" },
    },
    {
      label: "Real rate a year",
      text: conventions.realRate.asEntered,
      from: { kind: "brief", field: "money.realRate" },
    },
    studyInput(conventions),
  ],
  assumptions: ["The equal yearly cost falls at the end of each year of the study."],
  source: "derived; uniform present worth as in 10 CFR 436.16(c)",
});

/** How the cost of an hour or of a unit of area comes about from an equivalent annual cost in cents. */
export const shareWorking = (per: string, annualCost: number, divisor: WorkingInput): Working => ({
  formula: `cost per ${per} = equivalent annual cost ÷ ${divisor.label.toLowerCase()}`,
  inputs: [
    {
      label: "Equivalent annual cost",
      text: formatMoneyExact(shownCents(annualCost)),
      from: { kind: "figure", figure: "equivalentAnnualCost" },
    },
    divisor,
  ],
  assumptions: [],
  source: "derived",
});

const studyInput = ({ studyPeriod }: CostConventions): WorkingInput => ({
  label: "Study period",
  text: studyPeriod.asEntered,
  from: { kind: "brief", field: "money.studyPeriod" },
});

function lineInputs(
  line: PriceLine,
  { bid, area, conventions }: WorkingSetting,
): readonly [WorkingInput, ...WorkingInput[]] {
  const input = ({ label, amount, givenBy, schedule }: LinePrice): WorkingInput => ({
    label: givenBy === "owner-estimate" ? `${label} (owner’s estimate)` : label,
    text: `${amountText(amount, area)}, ${schedule}`,
    from: { kind: "price-line", bid, line: line.id },
  });
  const [main, ...others] = pricesOf(line, conventions.studyPeriod.years);
  return [input(main), ...others.map(input)];
}
