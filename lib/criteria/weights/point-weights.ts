import { sharesOf, type WeightShares } from "./model";

/** Points of one criterion, 0 or more. */
export type CriterionPoints = Readonly<{ criterion: string; points: number }>;

/** Points as they are given, to any total. Only proportions count. */
export const directWeights = (given: readonly CriterionPoints[]): WeightShares =>
  sharesOf(given.map(({ criterion, points }) => ({ criterion, weight: points })));

/** The end of the scale: the swing that matters most has it. */
export const greatestSwing = 100;

/**
 * Points for swings: what the move from the worst to the best anchor of one criterion is worth, beside the move that
 * is worth most, which has 100.
 * @returns shares, or the sentence that helps where no swing has 100
 * @source swing weighting, von Winterfeldt and Edwards 1986, from memory
 */
export function swingWeights(
  swings: readonly CriterionPoints[],
): Readonly<{ kind: "weighed"; shares: WeightShares } | { kind: "no-greatest"; message: string }> {
  const most = Math.max(0, ...swings.map(({ points }) => points));
  if (most === greatestSwing) return { kind: "weighed", shares: directWeights(swings) };
  const message = `The highest swing has ${most} points; expected ${greatestSwing} for the move from worst to best that matters most, and the others beside it.`;
  return { kind: "no-greatest", message };
}
