import { type Figure, intervalOfFigure } from "#lib/figure";
import type { Distribution } from "#lib/sampling";
import type { Span } from "./gate";

/**
 * A spread without ends counts in a score this many standard deviations to both sides, which holds about 19 of 20 results.
 * @source coverage factor 2 as in JCGM 100:2008, 6.2 and 6.3
 */
export const deviationsCounted = 2;

/**
 * How a figure may scatter: as its spread is stated, evenly over a range that says no more, and not at all for one
 * number. Null where there is nothing to draw: one number, or a figure that is open on a side.
 * @source nothing known but two ends: every value alike, JCGM 100:2008, 4.3.7
 */
export function spreadOfFigure(figure: Figure, stated: Distribution | null): Distribution | null {
  if (stated !== null) return stated;
  return figure.kind === "range" ? { kind: "uniform", low: figure.low, high: figure.high } : null;
}

/** What a figure may be where it is scored: its own interval, widened by a spread without ends. */
export function scoredSpan(figure: Figure, spread: Distribution | null): Span | null {
  const interval = intervalOfFigure(figure);
  if (interval === null || spread?.kind !== "normal") return interval;
  const reach = deviationsCounted * spread.deviation;
  return { low: interval.low - reach, high: interval.high + reach };
}
