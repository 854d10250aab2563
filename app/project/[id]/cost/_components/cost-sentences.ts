import { costDifference, inconclusiveBelow, shownCents } from "#lib/cost";
import { boundedGap } from "#lib/document";
import { bidsInWords } from "#lib/evaluation";
import { listed } from "#lib/figure";
import { formatMoney, formatValue, measured } from "#lib/quantity";
import { capitalised } from "../../../../_components/in-words";

/** What the sentences speak of: a bid and its costs in cents, which are the least they can be where `isLeast`. */
export type CostedBid = Readonly<{ letter: string; presentValue: number; priceAtBaseDate: number; isLeast: boolean }>;

type Setting = Readonly<{ studyYears: number; currency: string }>;

const percent = (share: number) => formatValue("fraction", measured("fraction", share), "us");
const lettersOf = (bids: readonly CostedBid[]) => bids.map(({ letter }) => letter);

/** Which bid costs least over the study, by how much, whether that decides, and how the prices at the base date stand. */
export function costSentences(bids: readonly CostedBid[], setting: Setting): readonly string[] {
  const byCost = bids.toSorted((one, other) => one.presentValue - other.presentValue);
  const [cheapest, ...others] = byCost;
  if (cheapest === undefined) return [];
  if (others.length === 0)
    return [
      `Bid ${cheapest.letter} costs ${costText(cheapest, setting)} ${study(setting)}. It is the only bid with prices, so there is nothing to compare it with yet.`,
    ];
  return [leadSentence(cheapest, others, setting), bandSentence(cheapest, others), orderSentence(bids, byCost)];
}

const study = ({ studyYears }: Setting) => `over the ${studyYears} years of the study`;

const costText = ({ presentValue, isLeast }: CostedBid, { currency }: Setting) =>
  `${isLeast ? "at least " : ""}${formatMoney(presentValue, currency)}`;

function leadSentence(cheapest: CostedBid, others: readonly CostedBid[], setting: Setting): string {
  const level = others.filter((bid) => shownCents(bid.presentValue) === shownCents(cheapest.presentValue));
  const sure = [cheapest, ...level].some(({ isLeast }) => isLeast) ? " as far as figures stand" : "";
  if (level.length > 0)
    return `${capitalised(bidsInWords(lettersOf([cheapest, ...level])))} cost least ${study(setting)}${sure}: ${formatMoney(cheapest.presentValue, setting.currency)} each.`;
  const [next] = others;
  const least = `Bid ${cheapest.letter} costs least ${study(setting)}${sure}: ${costText(cheapest, setting)}.`;
  return next === undefined
    ? least
    : `${least} Bid ${next.letter} comes next and costs ${gapText(cheapest, next, setting)}.`;
}

/** "$100,094 (8.7 %) more" */
function gapText(cheapest: CostedBid, other: CostedBid, { currency }: Setting): string {
  const { cents, share } = costDifference(cheapest.presentValue, other.presentValue);
  const gap = Number.isFinite(share)
    ? `${formatMoney(cents, currency)} (${percent(share)})`
    : formatMoney(cents, currency);
  return boundedGap(`${gap} more`, { isLowerLeast: cheapest.isLeast, isHigherLeast: other.isLeast });
}

function bandSentence(cheapest: CostedBid, others: readonly CostedBid[]): string {
  const band = percent(inconclusiveBelow.share);
  if (cheapest.isLeast)
    return `Bid ${cheapest.letter} has items without a figure, so it is not sure to stay the cheapest.`;
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
