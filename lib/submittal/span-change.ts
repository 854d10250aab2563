import type { Property } from "#lib/claim";

/** How one figure stands to another of the same property. `differs` is for properties of which neither way is better. */
export type SpanChange = "same" | "weaker" | "stronger" | "differs";

type Ends = Readonly<{ low: number; high: number }>;

/**
 * Holds a figure against the one that was promised, each with its least favourable end first.
 * @param direction of the property: which way is better, if either
 * @param sameWithin share of the promised figure by which the other may differ and still be the same
 */
export function spanChange(direction: Property["direction"], was: Ends, is: Ends, sameWithin: number): SpanChange {
  const worst = direction === "less" ? ([was.high, is.high] as const) : ([was.low, is.low] as const);
  const best = direction === "less" ? ([was.low, is.low] as const) : ([was.high, is.high] as const);
  const change = ([from, to]: readonly [number, number]): number => {
    const gap = from === to ? 0 : to - from; // both may be open to the same side
    return Math.abs(gap) <= sameWithin * Math.abs(from) * (1 + 1e-12) ? 0 : direction === "less" ? -gap : gap;
  };
  const [atWorst, atBest] = [change(worst), change(best)];
  if (atWorst === 0 && atBest === 0) return "same";
  if (direction === "none" || direction === "window") return "differs";
  if (atWorst < 0) return "weaker";
  return atWorst > 0 || atBest > 0 ? "stronger" : "weaker";
}
