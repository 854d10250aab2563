import type { Working, WorkingInput } from "#lib/figure";
import {
  type CurrencyCode,
  currencies,
  type ExactQuantity,
  formatMoneyExact,
  type In,
  isForeignPrice,
} from "#lib/quantity";
import { amountCents, amountText } from "../amount";
import { foreignPrices } from "../foreign-prices";
import type { PriceLine } from "../model";
import { shownCents } from "../shown-cents";
import { amountInWords } from "./amount-in-words";
import type { MoneyFinding } from "./model";

/** What a bid form states about its own sums, and the lines that count in them. */
export type StatedForm = Readonly<{
  bid: string;
  /** Every line of the form, whether it counts or not. */
  form: readonly PriceLine[];
  /** The lines that count, with shares resolved. */
  lines: readonly PriceLine[];
  statedTotal: ExactQuantity<"money"> | null;
  statedTotalInWords: string;
}>;

/** What forms usually go by where their figures differ. @source usual rule of instructions to bidders, common practice, no source */
const precedence = {
  words: "Words go before figures.",
  unitPrice: "The unit price goes before its product.",
  source: "usual rule of instructions to bidders; common practice, no source: look in the owner’s own instructions",
} as const;

type Setting = Readonly<{ area: In<"m²">; currency: CurrencyCode }>;

/** A cent for each rounding of a product or of the lines of a sum. */
const rounding = 1;

/** Holds the products, the sum and the words of a bid form against each other. */
export function bidFormArithmetic(form: StatedForm, setting: Setting): readonly MoneyFinding[] {
  return [
    ...form.form.flatMap((line) => extension(form.bid, line, setting)),
    ...sum(form, setting),
    ...sumInWords(form, setting),
    ...otherCurrency(form, setting),
  ];
}

function extension(bid: string, line: PriceLine, { area, currency }: Setting): readonly MoneyFinding[] {
  const { statedExtension, amount, label, id } = line;
  if (statedExtension === null || amount.kind === "lump-sum" || amount.kind === "share") return [];
  const product = amountCents(amount, area);
  const difference = product - statedExtension.value;
  if (Math.abs(difference) <= rounding) return [];
  const money = (cents: number) => formatMoneyExact(shownCents(cents), currency);
  return [
    {
      key: `extension:${id}`,
      ...{ check: "extension", severity: "differs", priceLines: [id] },
      sentence: `“${label}” states ${money(statedExtension.value)}; ${amountText(amount, area, currency)} comes to ${money(product)}, ${money(Math.abs(difference))} ${difference > 0 ? "more" : "less"}. ${precedence.unitPrice}`,
      question: `For “${label}” your form states ${money(statedExtension.value)}, while quantity and unit price come to ${money(product)}. Which of them stands?`,
      working: working("product = quantity × unit price", [
        lineInput(bid, line, "Quantity and unit price", amountText(amount, area, currency)),
        lineInput(bid, line, "Product as stated", statedExtension.asEntered),
      ]),
    },
  ];
}

/** Prices that the sum of a form holds: what is paid at the base date, alternates and options left out. */
const inFormSum = ({ kind, role, givenBy }: PriceLine): boolean =>
  givenBy === "bid" &&
  (kind === "at-base-date" || kind === "replacement-chain") &&
  ["base-bid", "allowance", "bond", "tax", "freight"].includes(role.kind);

function sum({ bid, lines, statedTotal }: StatedForm, { area, currency }: Setting): readonly MoneyFinding[] {
  const summed = lines.filter(inFormSum);
  if (statedTotal === null || summed.length === 0) return [];
  const total = summed.reduce((cents, { amount }) => cents + amountCents(amount, area), 0);
  const difference = total - statedTotal.value;
  // a form rounds each of its lines to cents before it adds
  if (Math.abs(difference) <= rounding * summed.length) return [];
  const money = (cents: number) => formatMoneyExact(shownCents(cents), currency);
  return [
    {
      key: "sum",
      ...{ check: "sum", severity: "differs", priceLines: summed.map(({ id }) => id) },
      sentence: `The form states a sum of ${money(statedTotal.value)}; its lines come to ${money(total)}, ${money(Math.abs(difference))} ${difference > 0 ? "more" : "less"}. The lines count here.`,
      question: `Your form states a sum of ${money(statedTotal.value)}, while its lines come to ${money(total)}. Which of them stands, and is a line missing?`,
      working: working("sum = Σ prices of the form at the base date, without alternates, unit prices and options", [
        ...summed.map((line) => lineInput(bid, line, line.label, amountText(line.amount, area, currency))),
        { label: "Sum as stated", text: statedTotal.asEntered, from: { kind: "constant" } },
      ]),
    },
  ];
}

function sumInWords({ statedTotal, statedTotalInWords }: StatedForm, { currency }: Setting): readonly MoneyFinding[] {
  if (statedTotalInWords === "") return [];
  const read = amountInWords(statedTotalInWords);
  const money = (cents: number) => formatMoneyExact(shownCents(cents), currency);
  const inputs = [
    { label: "Sum in words", text: statedTotalInWords, from: { kind: "constant" } },
    ...(statedTotal === null
      ? []
      : [{ label: "Sum in figures", text: statedTotal.asEntered, from: { kind: "constant" } } as const]),
  ] as const;
  const found = { key: "sum-in-words", check: "sum-in-words", priceLines: [] } as const;
  if (!read.ok) {
    return [
      {
        ...found,
        severity: "note",
        sentence: read.problem,
        question: `Your form writes the sum as “${statedTotalInWords}”. Which amount is meant?`,
        working: working("words as read", inputs),
      },
    ];
  }
  if (statedTotal === null || Math.abs(read.value - statedTotal.value) < rounding) return [];
  return [
    {
      ...found,
      severity: "differs",
      sentence: `The form writes “${statedTotalInWords}”, which is ${money(read.value)}, and ${money(statedTotal.value)} in figures. ${precedence.words}`,
      question: `Your form writes the sum as “${statedTotalInWords}” and as ${money(statedTotal.value)} in figures. Which of them stands?`,
      working: working("sum in words = sum in figures", inputs),
    },
  ];
}

function otherCurrency({ form, statedTotal, bid }: StatedForm, { currency }: Setting): readonly MoneyFinding[] {
  const foreign = foreignPrices(form, currency);
  const total = statedTotal !== null && isForeignPrice(statedTotal.asEntered, currency) ? [statedTotal.asEntered] : [];
  return [
    ...foreign.map(({ line, label, text }) => ({ key: line, what: `“${label}”`, text, lines: [line] })),
    ...total.map((text) => ({ key: "total", what: "The stated sum", text, lines: [] })),
  ].map(({ key, what, text, lines: ids }) => ({
    key: `currency:${key}`,
    ...{ check: "currency", severity: "differs", priceLines: ids },
    sentence: `${what} is written as “${text}”; the project is costed in ${currencies[currency].label}. What counts of it has no cost until it is written in them.`,
    question: `${what} is written as “${text}”. What is it in ${currencies[currency].label}?`,
    working: working("currency of the price = currency of the project", [
      { label: what, text, from: { kind: "price-line", bid, line: key } },
      { label: "Currency of the project", text: currency, from: { kind: "brief", field: "money.currency" } },
    ]),
  }));
}

const lineInput = (bid: string, { id }: PriceLine, label: string, text: string): WorkingInput => ({
  ...{ label, text },
  from: { kind: "price-line", bid, line: id },
});

const working = (formula: string, inputs: readonly WorkingInput[]): Working => ({
  ...{ formula, inputs },
  assumptions: [],
  source: precedence.source,
});
