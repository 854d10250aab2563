import { costDifference, inconclusiveBelow } from "#lib/cost";
import { type BidEvaluation, bidsAtStart, bidsInWords } from "#lib/evaluation";
import { inSentence, intervalOfFigure, listed } from "#lib/figure";
import { formatMoney } from "#lib/quantity";

const centsOf = ({ cost }: BidEvaluation): number | null => intervalOfFigure(cost.presentValue)?.low ?? null;

const percent = (share: number) => `${Number((share * 100).toPrecision(2))} %`;

/** How the life-cycle cost of the bid in front stands to the lowest one, and whether that difference says anything. */
export function costSentences(leader: BidEvaluation, bids: readonly BidEvaluation[], years: number): readonly string[] {
  const own = centsOf(leader);
  const others = bids.flatMap((bid) => {
    const cents = bid.id === leader.id ? null : centsOf(bid);
    return cents === null ? [] : [{ bid, cents }];
  });
  const [lowest] = others.toSorted((one, other) => one.cents - other.cents);
  if (own === null || lowest === undefined) return [];
  const { cents, share, verdict } = costDifference(own, lowest.cents);
  const name = bidsAtStart([leader.letter]);
  const other = bidsInWords([lowest.bid.letter]);
  if (cents === 0) return [`${name} and ${other} cost the same over ${years} years.`];
  const size = Number.isFinite(share) ? `${formatMoney(cents)} (${percent(share)})` : formatMoney(cents);
  const comparison =
    own > lowest.cents
      ? `${name} costs ${size} more than ${other}, the lowest cost over ${years} years.`
      : `${name} has the lowest cost over ${years} years, ${size} below ${other}.`;
  const weight =
    verdict === "inconclusive"
      ? `A difference under ${percent(inconclusiveBelow.share)} may not mean much.`
      : `That is more than the ${percent(inconclusiveBelow.share)} under which a difference may not mean much.`;
  return [comparison, weight, ...[leader, lowest.bid].flatMap(lackingSentences)];
}

/** Says for which items of scope no figure stands yet, so that the cost of a bid is at least what is shown. */
export function lackingSentences({ letter, cost }: BidEvaluation): readonly string[] {
  const lacking = cost.scope.flatMap(({ label, outcome }) => (outcome.kind === "open" ? [inSentence(label)] : []));
  if (cost.presentValue.kind !== "at-least" || lacking.length === 0) return [];
  return [`${bidsAtStart([letter])} has no figure yet for ${listed(lacking)}, so it costs at least what is shown.`];
}
