import { listed } from "#lib/figure";
import { formatMoney } from "#lib/quantity";
import { capitalised } from "../../../../_components/in-words";
import { type PricedBid, presentValueText } from "./priced-bid";
import { runningTotal, yearsPaid } from "./running-total";

/** What the bars show, in words. */
export function barsSummary(bids: readonly PricedBid[], currency: string): string {
  const totals = listed(bids.map((priced) => `${presentValueText(priced, currency)} for bid ${priced.bid.letter}`));
  return `Present value by what the money is spent on: ${totals}. Credits lie left of zero, and the small triangle marks the total after them. A dashed rule under a bar marks what rests on the owner’s estimates.`;
}

/** What the bars of the years show, in words. */
export function paymentsSummary(bids: readonly PricedBid[], currency: string): string {
  const largest = bids.map(({ bid, isLeast }) => {
    const [first = 0, ...later] = bid.cost.yearly;
    const most = Math.max(0, ...later);
    const start = `bid ${bid.letter} begins with ${isLeast ? "at least " : ""}${formatMoney(first, currency)}`;
    return most === 0
      ? `${start} and nothing later`
      : `${start}, and its largest later payment is ${formatMoney(most, currency)} in year ${later.indexOf(most) + 1}`;
  });
  return `Not discounted; a bar below nothing is a credit. ${capitalised(largest.join("; "))}.`;
}

/** What the lines of cost so far show, in words. */
export function linesSummary(bids: readonly PricedBid[], years: number, currency: string): string {
  const ends = listed(
    bids.map(({ bid, isLeast }) => {
      const total = formatMoney(runningTotal(bid.cost.yearly).at(-1) ?? 0, currency);
      return `${isLeast ? "at least " : ""}${total} for bid ${bid.letter}`;
    }),
  );
  return `All payments added up, not discounted; each is drawn as a step at the end of its year. After ${years} years and any residual value: ${ends}. ${renewalsText(bids)}`;
}

/** "Renewals: bid A in year 10; bid B in years 8 and 16; bid C in none." */
function renewalsText(bids: readonly PricedBid[]): string {
  const renewals = bids.map(({ bid }) => {
    const paid = yearsPaid(bid.cost.yearlyByCategory.replacement).map(String);
    if (paid.length === 0) return `bid ${bid.letter} in none`;
    return `bid ${bid.letter} in ${paid.length === 1 ? "year" : "years"} ${listed(paid)}`;
  });
  return `Renewals: ${renewals.join("; ")}.`;
}
