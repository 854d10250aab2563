import { costDifference, inconclusiveBelow, shownCents } from "#lib/cost";
import { bidsInWords } from "#lib/evaluation";
import { listed } from "#lib/figure";
import { formatMoney, formatValue, measured } from "#lib/quantity";
import { capitalised } from "../../../../_components/in-words";

/** What the sentences speak of: a bid and its costs in cents. */
export type CostedBid = Readonly<{ letter: string; presentValue: number; priceAtBaseDate: number }>;

const percent = (share: number) => formatValue("fraction", measured("fraction", share), "us");
const lettersOf = (bids: readonly CostedBid[]) => bids.map(({ letter }) => letter);

/** Which bid costs least over the study, by how much, whether that decides, and how the prices at the base date stand. */
export function costSentences(bids: readonly CostedBid[], studyYears: number): readonly string[] {
  const byCost = bids.toSorted((one, other) => one.presentValue - other.presentValue);
  const [cheapest, ...others] = byCost;
  if (cheapest === undefined) return [];
  const study = `over the ${studyYears} years of the study`;
  if (others.length === 0)
    return [
      `Bid ${cheapest.letter} costs ${formatMoney(cheapest.presentValue)} ${study}. It is the only bid with prices, so there is nothing to compare it with yet.`,
    ];
  return [leadSentence(cheapest, others, study), bandSentence(cheapest, others), orderSentence(bids, byCost)];
}

function leadSentence(cheapest: CostedBid, others: readonly CostedBid[], study: string): string {
  const level = others.filter((bid) => shownCents(bid.presentValue) === shownCents(cheapest.presentValue));
  if (level.length > 0)
    return `${capitalised(bidsInWords(lettersOf([cheapest, ...level])))} cost least ${study}: ${formatMoney(cheapest.presentValue)} each.`;
  const [next] = others;
  const least = `Bid ${cheapest.letter} costs least ${study}: ${formatMoney(cheapest.presentValue)}.`;
  return next === undefined
    ? least
    : `${least} Bid ${next.letter} comes next and costs ${gapText(cheapest, next)} more.`;
}

/** "$100,094 (8.7 %)" */
function gapText(cheapest: CostedBid, other: CostedBid): string {
  const { cents, share } = costDifference(cheapest.presentValue, other.presentValue);
  return Number.isFinite(share) ? `${formatMoney(cents)} (${percent(share)})` : formatMoney(cents);
}

function bandSentence(cheapest: CostedBid, others: readonly CostedBid[]): string {
  const band = percent(inconclusiveBelow.share);
  const close = others.filter(
    ({ presentValue }) => costDifference(cheapest.presentValue, presentValue).verdict === "inconclusive",
  );
  return close.length === 0
    ? `A difference under ${band} can be judged inconclusive (US GSA P100); no other bid is that close.`
    : `A difference under ${band} can be judged inconclusive (US GSA P100), so cost alone does not put bid ${cheapest.letter} ahead of ${bidsInWords(lettersOf(close))}.`;
}

function orderSentence(bids: readonly CostedBid[], byCost: readonly CostedBid[]): string {
  const byPrice = bids.toSorted((one, other) => one.priceAtBaseDate - other.priceAtBaseDate);
  const [priced, costed] = [lettersOf(byPrice), lettersOf(byCost)];
  return priced.join() === costed.join()
    ? `By price at the base date the order is the same: ${listed(priced)}.`
    : `By price at the base date the order differs: ${listed(priced)}, where over the study it is ${listed(costed)}.`;
}
