import { type Agreement, agreement, placingTotal, type Ranking, ranking, reweighted } from "#lib/criteria";
import { listed } from "#lib/figure";
import { bidsAtStart, bidsInWords } from "./bids-in-words";
import type { Evaluation, Requirements } from "./model";

/** The order of the bids by one person's weights, with what each bid is placed by. */
export type PersonsOrder = Readonly<{
  person: string;
  ranking: Ranking;
  /** 0 to 1, in the order of the evaluation; a bid that fails a gate has its total too, and no place. */
  totals: readonly Readonly<{ bid: string; total: number }>[];
}>;

/** What each person's weights would make of the bids, and how far these orders agree. */
export type PeoplesOrders = Readonly<{ people: readonly PersonsOrder[]; agreement: Agreement }>;

/**
 * The order of the bids under each person's own weights; gates and values are the same for all.
 * @returns null where weights are one person's, or where only their mean is to be shown
 */
export function peoplesOrders(
  { criteria, weighing, peoplesWeights }: Requirements,
  { bids }: Evaluation,
): PeoplesOrders | null {
  if (weighing.kind !== "several-people" || weighing.shown !== "apart" || peoplesWeights.length < 2) return null;
  const people = peoplesWeights.map(({ person, shares }): PersonsOrder => {
    const ofPerson = criteria.map(({ id }) => shares.find(({ criterion }) => criterion === id)?.share ?? 0);
    const scores = bids.map(({ score }) => reweighted(score, ofPerson));
    const totals = scores.map((score) => ({ bid: score.bid, total: placingTotal(score) }));
    return { person, ranking: ranking(scores), totals };
  });
  const placed = people.map(({ person, ranking: { failing }, totals }) => ({
    evaluator: person,
    scores: totals.filter(({ bid }) => !failing.includes(bid)).map(({ total }) => total),
  }));
  return { people, agreement: agreement(placed) };
}

const firstOf = ({ ranking: { places } }: PersonsOrder): readonly string[] =>
  places.filter(({ place }) => place === 1).map(({ bid }) => bid);

/** Whose weights put which bid first, and how far the orders agree, in sentences. */
export function peoplesSentences(
  { people, agreement: found }: PeoplesOrders,
  letterOf: (bid: string) => string,
): readonly string[] {
  const placed = people.map((one) => ({ person: one.person, letters: firstOf(one).map(letterOf).toSorted() }));
  const leaders = [...new Set(placed.map(({ letters }) => listed(letters)))].filter((letters) => letters !== "");
  const named = leaders.map((leader) => {
    const some = placed.filter(({ letters }) => listed(letters) === leader);
    return { letters: some[0]?.letters ?? [], persons: listed(some.map(({ person }) => person)) };
  });
  const come = (letters: readonly string[]) => (letters.length === 1 ? "comes first" : "share the first place");
  const [first, ...others] = named;
  if (first === undefined) return [];
  const lead =
    others.length === 0
      ? `${bidsAtStart(first.letters)} ${come(first.letters)} by everybody’s own weights.`
      : `${bidsAtStart(first.letters)} ${come(first.letters)} by the weights of ${first.persons}; ${others
          .map(({ letters, persons }) => `${bidsInWords(letters)} by those of ${persons}`)
          .join("; ")}.`;
  return found.kind === "measured"
    ? [
        lead,
        `Kendall’s W of the orders is ${found.concordance.toFixed(2)}, where 1 is one order from all and 0 is none.`,
      ]
    : [lead];
}
