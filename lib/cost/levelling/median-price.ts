import { type Figure, known, listed, type WorkingInput } from "#lib/figure";
import {
  type CurrencyCode,
  type ExactQuantity,
  failed,
  formatMoneyExact,
  type In,
  measured,
  type Result,
  succeeded,
} from "#lib/quantity";
import { amountCents, amountText } from "../amount";
import type { Amount, CountedIn, PriceLine } from "../model";
import { shownCents } from "../shown-cents";

/** A price line of another bid that holds the same item. */
export type ComparableLine = Readonly<{ bid: string; letter: string; line: PriceLine }>;

/** The line that stands in: the one of the median price with its schedule, and how the price comes about. */
export type MedianPrice = Readonly<{ template: PriceLine; amount: Amount; working: Figure<"money"> }>;

/** What a price comes to on: the area of the whole field in m², and the currency of the project. */
export type PricedSetting = Readonly<{ area: In<"m²">; currency: CurrencyCode }>;

/** What every reader of a median has to know: no other figure of a bid depends on the other bids. */
export const changesWithTheBids =
  "It changes when another bid is added or withdrawn; write it down as the owner’s own figure before bids are scored.";

/** The middle of sorted numbers, or the mean of the two middle ones. */
export function median(numbers: readonly number[]): number {
  const sorted = numbers.toSorted((one, other) => one - other);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle];
  if (upper === undefined) throw new RangeError("no numbers, so no median");
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? upper) + upper) / 2;
}

/**
 * The median of what the other bids charge for an item. Where all of them price it by unit in one kind of quantity, the
 * unit prices are compared and multiplied by the quantity wanted, or by the median of their quantities.
 * @returns a sentence where the lines are paid in unlike ways or there is none
 * @source common practice, no source
 */
export function medianPrice(
  lines: readonly ComparableLine[],
  quantity: ExactQuantity<CountedIn> | null,
  { area, currency }: PricedSetting,
): Result<MedianPrice, string> {
  const [first] = lines;
  if (first === undefined) {
    return failed("No other bid names a price line for this item, so there is no median. Give a figure or ask.");
  }
  if (lines.some(({ line }) => line.kind !== first.line.kind)) {
    return failed("The other bids are paid for this item in unlike ways, so there is no median. Give a figure.");
  }
  const amount = medianAmount(lines, quantity, area);
  const byPrice = lines.toSorted(
    (one, other) => amountCents(one.line.amount, area) - amountCents(other.line.amount, area),
  );
  const template = byPrice[Math.floor((byPrice.length - 1) / 2)]?.line ?? first.line;
  const cents = amountCents(amount, area);
  return succeeded({
    template,
    amount,
    working: known("money", measured("money", cents), {
      formula: `median of ${lines.length === 1 ? "the only other price" : `${lines.length} other prices`} for the item`,
      inputs: lines.map(
        ({ bid, letter, line }): WorkingInput => ({
          label: `Bid ${letter}, ${line.label}`,
          text: `${amountText(line.amount, area, currency)} = ${formatMoneyExact(shownCents(amountCents(line.amount, area)), currency)}`,
          from: { kind: "price-line", bid, line: line.id },
        }),
      ),
      assumptions: [
        `It is paid as bid ${byPrice.find(({ line }) => line === template)?.letter ?? first.letter} has it paid.`,
        changesWithTheBids,
        ...(lines.length < 3
          ? [`Only ${listed(lines.map(({ letter }) => `bid ${letter}`))} gives a price for it.`]
          : []),
      ],
      source: "common practice, no source",
    }),
  });
}

function medianAmount(
  lines: readonly ComparableLine[],
  wanted: ExactQuantity<CountedIn> | null,
  area: In<"m²">,
): Amount {
  const amounts = lines.map(({ line }) => line.amount);
  const byUnit = amounts.flatMap((amount) => (amount.kind === "per-unit" ? [amount] : []));
  const [first] = byUnit;
  const alike =
    byUnit.length === amounts.length && byUnit.every((a) => a.quantity.dimension === first?.quantity.dimension);
  if (first !== undefined && alike && (wanted === null || wanted.dimension === first.quantity.dimension)) {
    const unitPrice = median(byUnit.map(({ unitPrice: { value } }) => value));
    const quantity = wanted ?? medianQuantity(byUnit.map((amount) => amount.quantity));
    return {
      kind: "per-unit",
      quantity,
      unitPrice: {
        ...first.unitPrice,
        value: unitPrice as typeof first.unitPrice.value,
        asEntered: `the median unit price of ${byUnit.length}`,
      },
    };
  }
  const cents = median(amounts.map((amount) => amountCents(amount, area)));
  const asEntered = `the median of ${amounts.length}`;
  return { kind: "lump-sum", price: { dimension: "money", unit: "$", asEntered, value: measured("money", cents) } };
}

function medianQuantity(quantities: readonly ExactQuantity<CountedIn>[]): ExactQuantity<CountedIn> {
  const [first] = quantities;
  if (first === undefined) throw new RangeError("no quantities, so no median");
  const value = median(quantities.map((quantity) => quantity.value)) as typeof first.value;
  const same = quantities.find((quantity) => quantity.value === value);
  return same ?? ({ ...first, value, asEntered: `the median quantity of ${quantities.length}` } as typeof first);
}
