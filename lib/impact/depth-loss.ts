import { type In, measured } from "#lib/quantity";
import type { DepthLaw } from "./depth-law";
import { halfInchRule } from "./depth-sensitivity";

/**
 * Level after a spot has lost infill depth. The two readings agree at no loss and at half an inch.
 * @param loss below 0 where infill was added; the rule itself speaks of losses only
 * @param perDepth k of the log-linear reading; the linear one is drawn through the same level at half an inch
 * @source common practice, no source: half an inch makes 42 % with the default k
 */
export const levelAfterDepthLoss = (
  level: In<"g">,
  loss: In<"m">,
  law: DepthLaw,
  perDepth: In<"1/m"> = halfInchRule.perDepth,
): In<"g"> => measured("impactLevel", level * growth(loss, law, perDepth));

/**
 * Depth a spot can lose until it reaches a level; below 0 where it is there already.
 * The inverse of `levelAfterDepthLoss`.
 * @throws RangeError unless both levels are above 0
 */
export function lossToReach(level: In<"g">, limit: In<"g">, law: DepthLaw, perDepth: In<"1/m">): In<"m"> {
  if (!(level > 0 && limit > 0)) throw new RangeError(`levels must be above 0 g, got ${level} and ${limit}`);
  switch (law) {
    case "log-linear":
      return measured("length", Math.log(limit / level) / perDepth);
    case "linear":
      return measured("length", (limit / level - 1) / linearSlope(perDepth));
  }
}

function growth(loss: In<"m">, law: DepthLaw, perDepth: In<"1/m">): number {
  switch (law) {
    case "log-linear":
      return Math.exp(perDepth * loss);
    case "linear":
      return 1 + linearSlope(perDepth) * loss;
  }
}

/** Share of the first level per metre, through the point that the log-linear reading has at half an inch. */
export const linearSlope = (perDepth: In<"1/m">): number =>
  Math.expm1(perDepth * halfInchRule.depthLoss) / halfInchRule.depthLoss;
