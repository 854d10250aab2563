import type { GateRule } from "#lib/criteria";

/** The limit with its tolerance given to the figure. */
export function widenedLimit(limit: GateRule, stray: number): GateRule {
  const moved = <Q extends Readonly<{ value: number }>>(quantity: Q, by: number): Q => ({
    ...quantity,
    value: quantity.value + by,
  });
  switch (limit.kind) {
    case "at-least":
      return { ...limit, limit: moved(limit.limit, -stray) };
    case "at-most":
    case "below":
      return { ...limit, limit: moved(limit.limit, stray) };
    case "within":
      return { ...limit, low: moved(limit.low, -stray), high: moved(limit.high, stray) };
  }
}
