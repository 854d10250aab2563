import { listed } from "#lib/figure";
import type { BidRanks, RankAcceptability, WeightChoice } from "#lib/robustness";

/** "74 of 100", never more than the draws can tell. */
export function ofHundred(share: number): string {
  if (share === 0) return "none";
  if (share === 1) return "all";
  if (share < 0.005) return "fewer than 1 of 100";
  if (share > 0.995) return "more than 99 of 100";
  return `${Math.round(share * 100)} of 100`;
}

/** A standard error in hundredths: "0.1 of 100". */
export const errorOfHundred = (error: number): string => `${Number((100 * error).toPrecision(2))} of 100`;

const first = ({ places }: BidRanks): number => places[0]?.value ?? 0;

/** What is counted: draws of claims where the weights stay, sets of weights where they are drawn. */
export const drawnThings = ({ kind }: WeightChoice): string => (kind === "owners" ? "draws" : "sets of weights");

/** How often each bid comes first over the sets of weights tried, in one or two sentences. */
export function rankWords({ bids, weights }: RankAcceptability, letterOf: (bid: string) => string): string {
  const [most, ...others] = bids.toSorted((one, other) => first(other) - first(one));
  if (most === undefined) return "No bid is in the order.";
  const error = most.places[0]?.standardError ?? 0;
  const named = `In ${ofHundred(first(most))} ${drawnThings(weights)} bid ${letterOf(most.bid)} comes first`;
  const stated = error > 0 ? ` (standard error ${errorOfHundred(error)})` : "";
  const sometimes = others.filter((bid) => first(bid) > 0);
  const never = others.filter((bid) => first(bid) === 0);
  const rest = [
    ...sometimes.map((bid) => `bid ${letterOf(bid.bid)} in ${ofHundred(first(bid))}`),
    ...(never.length === 0 ? [] : [`${listed(never.map(({ bid }) => `bid ${letterOf(bid)}`))} in none`]),
  ];
  return `${named}${stated}${rest.length === 0 ? "." : `; ${listed(rest)}.`}`;
}

/** Two of three draws of a share lie about one standard deviation to either side. @source variance of a Dirichlet share, w(1 − w) ÷ (concentration + 1) */
function usualRange(share: number, concentration: number): Readonly<{ from: number; to: number }> {
  const deviation = Math.sqrt((share * (1 - share)) / (concentration + 1));
  return { from: Math.max(0, share - deviation), to: Math.min(1, share + deviation) };
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** Which weights are tried, in words. `heaviest` is the criterion of the owner's that weighs most. */
export function choiceWords(choice: WeightChoice, heaviest: Readonly<{ label: string; share: number }>): string {
  switch (choice.kind) {
    case "owners":
      return "The owner’s own weights stay as they are; only what is open in the claims is drawn.";
    case "any":
      return "Any weights at all, each set as likely as any other, as if nobody had said what matters.";
    case "owners-order":
      return "Only weights that keep the owner’s order: what the owner holds more important never weighs less.";
    case "near-owners": {
      const { from, to } = usualRange(heaviest.share, choice.concentration);
      return `Weights near the owner’s own: in two of three sets “${heaviest.label}”, now ${percent(heaviest.share)}, weighs from ${percent(from)} to ${percent(to)}, and the others move likewise (concentration ${choice.concentration}).`;
    }
  }
}
