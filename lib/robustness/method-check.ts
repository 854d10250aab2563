import { sameTotal } from "./model";

/** A bid as the methods see it. Cost in cents, null where none is known; points are what it is worth without its cost, 0 to 1. */
export type MethodBid = Readonly<{ bid: string; standing: "in" | "out"; cents: number | null; points: number }>;

/** How cost is turned into points where it is weighed: on the owner's own anchors, so that no other bid moves it. */
export type CostAnchors = Readonly<{ bestCents: number; worstCents: number; share: number }>;

export type MethodName = "owners-score" | "lowest-cost" | "cost-per-point" | "points-alone" | "weighted-with-price";

export type MethodOutcome = Readonly<{
  method: MethodName;
  label: string;
  /** What each bid in contention comes to; null where a method has no figure for it. */
  figures: readonly Readonly<{ bid: string; figure: number | null }>[];
  /** Those that come first; more than one where they tie, none where no bid has a figure. */
  leaders: readonly string[];
}>;

export type MethodCheck = Readonly<{ outcomes: readonly MethodOutcome[]; agrees: boolean }>;

const labels: Readonly<Record<MethodName, string>> = {
  "owners-score": "the owner’s weighted score",
  "lowest-cost": "the lowest cost among bids that pass",
  "cost-per-point": "the lowest cost per point",
  "points-alone": "the most points, whatever the cost",
  "weighted-with-price": "points weighed with price",
};

/** Which bid leads by each of several ways to decide, over the bids that pass all gates, and whether that differs. */
export function methodCheck(
  bids: readonly MethodBid[],
  scores: ReadonlyMap<string, number>,
  anchors: CostAnchors | null,
): MethodCheck {
  const passing = bids.filter(({ standing }) => standing === "in");
  const by = (
    method: MethodName,
    first: "highest" | "lowest",
    figureOf: (bid: MethodBid) => number | null,
  ): MethodOutcome => {
    const figures = passing.map((bid) => ({ bid: bid.bid, figure: figureOf(bid) }));
    const known = figures.flatMap(({ figure }) => (figure === null ? [] : [figure]));
    const best = first === "highest" ? Math.max(...known) : Math.min(...known);
    const leaders = figures.filter(
      ({ figure }) => figure !== null && Math.abs(figure - best) <= sameTotal * Math.max(1, Math.abs(best)),
    );
    return { method, label: labels[method], figures, leaders: leaders.map(({ bid }) => bid) };
  };
  const outcomes = [
    by("owners-score", "highest", ({ bid }) => scores.get(bid) ?? null),
    by("lowest-cost", "lowest", ({ cents }) => cents),
    by("cost-per-point", "lowest", ({ cents, points }) =>
      cents !== null && points > 0 ? cents / (100 * points) : null,
    ),
    by("points-alone", "highest", ({ points }) => points),
    ...(anchors === null ? [] : [by("weighted-with-price", "highest", (bid) => weighedWithPrice(bid, anchors))]),
  ];
  const told = new Set(outcomes.map(({ leaders }) => leaders.join()));
  return { outcomes, agrees: told.size <= 1 };
}

/** @source owner-anchored price points: they stay put whoever else bids, derived */
function weighedWithPrice({ cents, points }: MethodBid, anchors: CostAnchors): number | null {
  if (cents === null) return null;
  const { bestCents, worstCents, share } = anchors;
  const price = Math.min(1, Math.max(0, (worstCents - cents) / (worstCents - bestCents)));
  return share * price + (1 - share) * points;
}

/** Whether the answer hangs on the method, in words. */
export function explainMethods({ outcomes, agrees }: MethodCheck, nameOf: (bid: string) => string): string {
  const names = (leaders: readonly string[]) => leaders.map(nameOf).join(" and ");
  const led = outcomes.filter(({ leaders }) => leaders.length > 0);
  const [first] = led;
  if (first === undefined) return "No bid passes all gates, so no method has a leader.";
  if (agrees)
    return `${names(first.leaders)} comes first by every method looked at: ${led.map(({ label }) => label).join(", ")}.`;
  return `The answer hangs on the method: ${led.map(({ label, leaders }) => `${names(leaders)} by ${label}`).join(", ")}.`;
}
