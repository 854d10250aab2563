import type { Origin, Working, WorkingInput } from "#lib/figure";
import { formatMoneyExact, type In } from "#lib/quantity";
import { amountText } from "./amount";
import { type LinePrice, studyYearsOf } from "./cost-line-kind";
import { assumptionsOf, pricesOf } from "./cost-lines";
import type { LineOrigin } from "./levelling/levelled-line";
import type { CostConventions, PriceLine, Timing } from "./model";
import { shownCents } from "./shown-cents";

/** What the workings of a life-cycle cost speak of. */
export type WorkingSetting = Readonly<{
  bid: string;
  area: In<"m²">;
  conventions: CostConventions;
  /** Where the lines were not entered with the bid: the owner's additions, by the id of their line. */
  origins?: ReadonlyMap<string, LineOrigin> | undefined;
}>;

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
    assumptions: lines.flatMap((line) => assumptionsOf(line, studyYearsOf(setting.conventions))),
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
      ...inflationInput(conventions),
      studyInput(conventions),
    ],
    assumptions: [
      moneyWords(conventions),
      ...serviceWords(conventions),
      timingWords[conventions.timing],
      ...lines.assumptions,
    ],
    source: "derived; discounting as in 10 CFR 436.16",
  };
}

/** Inflation enters where the flows carry it. */
const inflationInput = ({ money, inflation }: CostConventions): readonly WorkingInput[] =>
  money === "constant" || inflation === null
    ? []
    : [
        {
          label: "General inflation a year",
          text: inflation.asEntered,
          from: { kind: "brief", field: "money.inflation" },
        },
      ];

const moneyWords = ({ money, baseDate, inflation }: CostConventions): string =>
  money === "constant" || inflation === null
    ? `Money keeps its value of ${baseDate}: general inflation is left out of the prices and of the rate.`
    : `Prices of ${baseDate} rise by ${inflation.asEntered} a year to the day of payment, and the rate holds the same inflation: (1 + real rate) × (1 + inflation) − 1.`;

const serviceWords = ({ serviceStart }: CostConventions): readonly string[] =>
  serviceStart.years === 0
    ? []
    : [
        `Service starts ${serviceStart.years === 1 ? "a year" : `${serviceStart.years} years`} after the base date; lives and what recurs count from there, the study from the base date.`,
      ];

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
      text: formatMoneyExact(shownCents(presentValue), conventions.currency),
      from: { kind: "figure", figure: "presentValue" },
    },
    {
      label: "Real rate a year",
      text: conventions.realRate.asEntered,
      from: { kind: "brief", field: "money.realRate" },
    },
    studyInput(conventions),
  ],
  assumptions: ["The equal yearly cost falls at the end of each year of the study, in money of the base date."],
  source: "derived; uniform present worth as in 10 CFR 436.16(c)",
});

/** How the cost of an hour or of a unit of area comes about from an equivalent annual cost in cents. */
export const shareWorking = (
  per: string,
  annualCost: number,
  divisor: WorkingInput,
  { currency }: CostConventions,
): Working => ({
  formula: `cost per ${per} = equivalent annual cost ÷ ${divisor.label.toLowerCase()}`,
  inputs: [
    {
      label: "Equivalent annual cost",
      text: formatMoneyExact(shownCents(annualCost), currency),
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
  { bid, area, conventions, origins }: WorkingSetting,
): readonly [WorkingInput, ...WorkingInput[]] {
  const input = ({ label, amount, givenBy, schedule }: LinePrice): WorkingInput => ({
    label: givenBy === "owner-estimate" ? `${label} (owner’s estimate)` : label,
    text: `${amountText(amount, area, conventions.currency)}, ${schedule}`,
    from: placeOfLine(line.id, bid, origins?.get(line.id)),
  });
  const [main, ...others] = pricesOf(line, studyYearsOf(conventions));
  return [input(main), ...others.map(input)];
}

/** Where a line was entered: with the bid, or in the owner's costing. */
export function placeOfLine(line: string, bid: string, origin: LineOrigin | undefined): Origin {
  switch (origin?.kind) {
    case "plug":
      return { kind: "costing", field: `levelling.${bid}.${origin.item}` };
    case "link":
      return { kind: "costing", field: `links.${bid}.${origin.link}` };
    default:
      return { kind: "price-line", bid, line };
  }
}
