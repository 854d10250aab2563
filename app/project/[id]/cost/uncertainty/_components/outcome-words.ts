import type { CostOutcome } from "#lib/cost";
import { formatMoney } from "#lib/quantity";
import type { DrawnBid } from "./drawn-bid";

const letterOf = (bids: readonly DrawnBid[], id: string) => bids.find((bid) => bid.id === id)?.letter ?? id;

/** "74 in 100", never more than the draws can tell. */
export function inHundred(chance: number): string {
  if (chance <= 0.005) return "fewer than 1 in 100";
  if (chance >= 0.995) return "more than 99 in 100";
  return `${Math.round(chance * 100)} in 100`;
}

/** What the draws say, in sentences: who is how often the cheapest, and how sure the first is of the second. */
export function outcomeWords(
  { bids: outcomes, pairs, samples }: CostOutcome,
  bids: readonly DrawnBid[],
  currency: string,
): readonly string[] {
  const byChance = outcomes.toSorted((one, other) => other.cheapest.value - one.cheapest.value);
  const [first, second] = byChance;
  if (first === undefined) return [];
  const tenth = first.percentiles.find(({ chance }) => chance === 0.1)?.cents ?? first.lowest;
  const ninetieth = first.percentiles.find(({ chance }) => chance === 0.9)?.cents ?? first.highest;
  const letter = letterOf(bids, first.bid);
  const range = `In 8 draws of 10 it costs between ${formatMoney(tenth, currency)} and ${formatMoney(ninetieth, currency)}.`;
  if (second === undefined)
    return [`Bid ${letter} costs ${formatMoney(first.mean.value, currency)} on average. ${range}`];
  const pair = pairs.find(({ bid, than }) => bid === first.bid && than === second.bid);
  const other = letterOf(bids, second.bid);
  const error = (first.cheapest.standardError * 100).toLocaleString("en-US", { maximumFractionDigits: 1 });
  return [
    `Bid ${letter} is the cheapest in ${inHundred(first.cheapest.value)} draws (standard error ${error} in 100, from ${samples.toLocaleString("en-US")} draws). ${range}`,
    pair === undefined
      ? ""
      : `It costs less than bid ${other} in ${inHundred(pair.chance.value)} draws, by ${formatMoney(pair.saving.value, currency)} on average.`,
  ].filter((sentence) => sentence !== "");
}
