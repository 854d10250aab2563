import type { WorkingInput } from "#lib/figure";
import { type CurrencyCode, formatMoney, formatMoneyExact, type In } from "#lib/quantity";
import { amountCents, amountText } from "../amount";
import type { Costing } from "../costing-model";
import { median } from "../levelling/median-price";
import { scopeIndex } from "../levelling/scope";
import type { PriceLine } from "../model";
import { shownCents } from "../shown-cents";
import type { MoneyFinding } from "./model";

/**
 * How prices are screened. A price far from the middle of at least three is worth a question; it is no verdict, because a
 * bidder may have a good reason.
 * @source common practice, no source
 */
export const priceScreen = {
  fewestBids: 3,
  totalApart: 0.2,
  itemApart: 0.5,
  unitPriceTimes: 2,
  source: "distance from the median of at least three bids; common practice, no source",
} as const;

/** A bid as its prices are screened: the bidder's own lines that count, and their sum at the base date in cents. */
export type ScreenedBid = Readonly<{
  id: string;
  letter: string;
  lines: readonly PriceLine[];
  priceAsBid: number | null;
}>;

type Setting = Readonly<{ area: In<"m²">; currency: CurrencyCode; costing: Costing }>;

/** What stands out in the prices of each bid beside the others, by the id of the bid. */
export function abnormalPrices(
  bids: readonly ScreenedBid[],
  setting: Setting,
): ReadonlyMap<string, readonly MoneyFinding[]> {
  const found = new Map<string, MoneyFinding[]>(bids.map(({ id }) => [id, []]));
  const put = (bid: string, finding: MoneyFinding) => found.get(bid)?.push(finding);
  screenTotals(bids, setting, put);
  const index = scopeIndex(
    setting.costing,
    bids.map(({ id, letter, lines }) => ({ id, letter, counted: lines })),
  );
  for (const { id, label } of setting.costing.checklist) screenItem({ id, label }, index.holding(id), setting, put);
  return found;
}

type Put = (bid: string, finding: MoneyFinding) => void;

const percent = (share: number) => `${Math.round(Math.abs(share) * 100)} %`;
const side = (share: number) => (share > 0 ? "above" : "below");

function screenTotals(bids: readonly ScreenedBid[], { currency }: Setting, put: Put): void {
  const priced = bids.flatMap(({ id, letter, priceAsBid }) =>
    priceAsBid !== null && priceAsBid > 0 ? [{ id, letter, priceAsBid }] : [],
  );
  if (priced.length < priceScreen.fewestBids) return;
  const middle = median(priced.map(({ priceAsBid }) => priceAsBid));
  const money = (cents: number) => formatMoney(cents, currency);
  for (const { id, priceAsBid } of priced) {
    const apart = priceAsBid / middle - 1;
    if (Math.abs(apart) <= priceScreen.totalApart) continue;
    put(id, {
      key: "total-spread",
      ...{ check: "total-spread", severity: "note", priceLines: [] },
      sentence: `The price as bid, ${money(priceAsBid)}, lies ${percent(apart)} ${side(apart)} ${money(middle)}, the median of ${priced.length} bids. That is no verdict; ask whether the same work is meant.`,
      question: `Your price is ${percent(apart)} ${side(apart)} the median of the bids. Please confirm that it holds the whole scope asked for.`,
      working: {
        formula: "distance = price as bid ÷ median of all prices as bid − 1",
        inputs: priced.map(
          (one): WorkingInput => ({
            label: `Price as bid, bid ${one.letter}`,
            text: money(one.priceAsBid),
            from: { kind: "figure", figure: "priceAsBid" },
          }),
        ),
        assumptions: [
          `A distance over ${percent(priceScreen.totalApart)} is noted, with at least ${priceScreen.fewestBids} bids.`,
        ],
        source: priceScreen.source,
      },
    });
  }
}

type Held = ReturnType<ReturnType<typeof scopeIndex>["holding"]>;

function screenItem(
  item: Readonly<{ id: string; label: string }>,
  held: Held,
  { area, currency }: Setting,
  put: Put,
): void {
  if (held.length < priceScreen.fewestBids) return;
  const unitPrices = held.flatMap(({ line: { amount } }) => (amount.kind === "per-unit" ? [amount] : []));
  const [first] = unitPrices;
  const byUnit =
    unitPrices.length === held.length &&
    unitPrices.every(({ quantity }) => quantity.dimension === first?.quantity.dimension);
  const priceOf = ({ amount }: PriceLine) =>
    byUnit && amount.kind === "per-unit" ? amount.unitPrice.value : amountCents(amount, area);
  const middle = median(held.map(({ line }) => priceOf(line)));
  if (!(middle > 0)) return;
  for (const { bid, line } of held) {
    const ratio = priceOf(line) / middle;
    const apart = ratio - 1;
    const isUnbalanced = ratio >= priceScreen.unitPriceTimes || ratio <= 1 / priceScreen.unitPriceTimes;
    if (byUnit ? !isUnbalanced : Math.abs(apart) <= priceScreen.itemApart) continue;
    const what = byUnit ? "unit price" : "price";
    const limit = byUnit
      ? `A unit price of ${priceScreen.unitPriceTimes} times the median or more, or of half of it or less, is noted`
      : `A distance over ${percent(priceScreen.itemApart)} is noted`;
    put(bid, {
      key: `${byUnit ? "unbalanced-unit-price" : "item-spread"}:${line.id}`,
      ...{ check: byUnit ? "unbalanced-unit-price" : "item-spread", severity: "note", priceLines: [line.id] },
      sentence: `The ${what} of “${line.label}” lies ${percent(apart)} ${side(apart)} the median of ${held.length} bids for ${item.label.toLowerCase()}. That is no verdict; ask what it holds.`,
      question: `The ${what} of “${line.label}” is ${percent(apart)} ${side(apart)} the median of the bids. What does it hold?`,
      working: {
        formula: `distance = ${what} ÷ median of the bids − 1`,
        inputs: held.map(
          (one): WorkingInput => ({
            label: `Bid ${one.letter}, ${one.line.label}`,
            text: `${amountText(one.line.amount, area, currency)} = ${formatMoneyExact(shownCents(amountCents(one.line.amount, area)), currency)}`,
            from: { kind: "price-line", bid: one.bid, line: one.line.id },
          }),
        ),
        assumptions: [`${limit}, with at least ${priceScreen.fewestBids} bids.`],
        source: priceScreen.source,
      },
    });
  }
}
