import { type CostConventions, costDifference, inconclusiveBelow } from "#lib/cost";
import { type BidEvaluation, bidsAtStart, bidsInWords } from "#lib/evaluation";
import { inSentence, intervalOfFigure, listed } from "#lib/figure";
import { formatMoney } from "#lib/quantity";

const centsOf = ({ cost }: BidEvaluation): number | null => intervalOfFigure(cost.presentValue)?.low ?? null;

const percent = (share: number) => `${Number((share * 100).toPrecision(2))} %`;

/** How the life-cycle cost of the bid in front stands to the lowest one, and whether that difference says anything. */
export function costSentences(
  leader: BidEvaluation,
  bids: readonly BidEvaluation[],
  { studyPeriod: { years }, currency }: Pick<CostConventions, "studyPeriod" | "currency">,
): readonly string[] {
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
  const lacking = [leader, lowest.bid].flatMap(lackingSentences);
  if (cents === 0) {
    const sure = lacking.length > 0 ? " as far as figures stand" : "";
    return [`${name} and ${other} cost the same over ${years} years${sure}.`, ...lacking];
  }
  const money = formatMoney(cents, currency);
  const gap = Number.isFinite(share) ? `${money} (${percent(share)})` : money;
  const [lower, higher] = own > lowest.cents ? [lowest.bid, leader] : [leader, lowest.bid];
  const size = (words: string) =>
    boundedGap(`${gap} ${words}`, { isLowerLeast: isLeast(lower), isHigherLeast: isLeast(higher) });
  const comparison =
    own > lowest.cents
      ? `${name} costs ${size(`more than ${other}, the lowest cost over ${years} years`)}.`
      : `${name} has the lowest cost over ${years} years, ${size(`below ${other}`)}.`;
  if (isLeast(lower)) return [comparison, ...lacking]; // how far the two lie apart is not known
  const weight =
    verdict === "inconclusive"
      ? `A difference under ${percent(inconclusiveBelow.share)} may not mean much.`
      : `That is more than the ${percent(inconclusiveBelow.share)} under which a difference may not mean much.`;
  return [comparison, weight, ...lacking];
}

const isLeast = ({ cost }: BidEvaluation): boolean => cost.presentValue.kind === "at-least";

/** "$5,000 more" between two costs, as sure as the two are: "at least $5,000 more", "at most $5,000 more". */
export function boundedGap(
  text: string,
  { isLowerLeast, isHigherLeast }: Readonly<{ isLowerLeast: boolean; isHigherLeast: boolean }>,
): string {
  if (isLowerLeast && isHigherLeast) return `${text}, as far as figures stand`;
  if (isLowerLeast) return `at most ${text}`;
  return isHigherLeast ? `at least ${text}` : text;
}

/** Says for which items of scope no figure stands yet, so that the cost of a bid is at least what is shown. */
export function lackingSentences({ letter, cost }: BidEvaluation): readonly string[] {
  const lacking = cost.scope.flatMap(({ label, outcome }) => (outcome.kind === "open" ? [inSentence(label)] : []));
  if (cost.presentValue.kind !== "at-least" || lacking.length === 0) return [];
  return [`${bidsAtStart([letter])} has no figure yet for ${listed(lacking)}, so it costs at least what is shown.`];
}
