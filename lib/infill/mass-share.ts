import type { Span } from "#lib/quantity";
import { arealDensityOf } from "./component";
import type { InfillComponent, InfillSystem } from "./model";

type Part = Readonly<{ mass: Span; share: number }>;

/** Σ mass × share ÷ Σ mass, with the favoured parts at their largest mass and the others at their smallest; NaN without mass. */
function weighedShare(parts: readonly Part[], favoured: readonly Part[]): number {
  const unbounded = favoured.find(({ mass }) => mass.high === Number.POSITIVE_INFINITY);
  if (unbounded !== undefined) return unbounded.share;
  const massOf = (part: Part) => (favoured.includes(part) ? part.mass.high : part.mass.low);
  const total = parts.reduce((sum, part) => sum + massOf(part), 0);
  return parts.reduce((sum, part) => sum + massOf(part) * part.share, 0) / total;
}

/**
 * Shares at the corners that can be extreme. Raising a mass pulls the result towards that part's own share, so at an
 * extreme the parts beyond the result have their largest mass and all others their smallest: one of the n + 1 cuts
 * through the ranked list. An unbounded mass that ranks first outweighs the rest.
 */
const cornerShares = (parts: readonly Part[], ranked: readonly Part[]): readonly number[] =>
  [...parts.keys(), parts.length]
    .map((cut) => weighedShare(parts, ranked.slice(0, cut)))
    .filter((share) => !Number.isNaN(share));

/**
 * Share of the total mass that is of some kind, where each component holds between `low` and `high` of it.
 * Exact bounds: the same mass stands above and below the fraction bar, so dividing interval by interval would be too wide.
 * Null if there can be no mass at all.
 */
export function massShare({ components }: InfillSystem, kindOf: (component: InfillComponent) => Span): Span | null {
  const partsAt = (end: keyof Span): readonly Part[] =>
    components.map((component) => ({ mass: arealDensityOf(component), share: kindOf(component)[end] }));
  const [lows, highs] = [partsAt("low"), partsAt("high")];
  const poorestFirst = cornerShares(
    lows,
    lows.toSorted((one, other) => one.share - other.share),
  );
  const richestFirst = cornerShares(
    highs,
    highs.toSorted((one, other) => other.share - one.share),
  );
  return poorestFirst.length === 0 || richestFirst.length === 0
    ? null
    : { low: Math.min(...poorestFirst), high: Math.max(...richestFirst) };
}
