import type { GateRule } from "#lib/criteria";

/** The figures a limit allows, in SI; an end that does not pass itself is open. */
export type AllowedFigures = Readonly<{ low: number; high: number; isHighOpen: boolean }>;

export function allowedFigures(limit: GateRule): AllowedFigures {
  switch (limit.kind) {
    case "at-least":
      return { low: limit.limit.value, high: Number.POSITIVE_INFINITY, isHighOpen: false };
    case "at-most":
      return { low: Number.NEGATIVE_INFINITY, high: limit.limit.value, isHighOpen: false };
    case "below":
      return { low: Number.NEGATIVE_INFINITY, high: limit.limit.value, isHighOpen: true };
    case "within":
      return { low: limit.low.value, high: limit.high.value, isHighOpen: false };
  }
}

/** Rounding of a unit conversion, so that 2 in and 50.8 mm are one figure. */
const rounding = 1e-12;

/** Whether no figure at all satisfies both. */
export function excludeEachOther(one: AllowedFigures, other: AllowedFigures): boolean {
  const low = Math.max(one.low, other.low);
  const high = Math.min(one.high, other.high);
  if (!Number.isFinite(low) || !Number.isFinite(high)) return false;
  const isSame = Math.abs(low - high) <= rounding * Math.max(Math.abs(low), Math.abs(high));
  if (!isSame) return low > high;
  return [one, other].some(
    ({ high: end, isHighOpen }) => isHighOpen && Math.abs(end - high) <= rounding * Math.abs(high),
  );
}
