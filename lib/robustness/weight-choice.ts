import { evenWeights, nearbyWeights, orderedWeights, type WeightDraw } from "#lib/sampling";

/**
 * Which weights are tried.
 * - `owners`: the owner's own, so that only doubt about values shows.
 * - `any`: all weights alike.
 * - `owners-order`: all that keep the owner's order of importance; equal weights are free among themselves.
 * - `near-owners`: around the owner's, the nearer the higher the concentration.
 */
export type WeightChoice = Readonly<
  { kind: "owners" } | { kind: "any" } | { kind: "owners-order" } | { kind: "near-owners"; concentration: number }
>;

/** Concentration that is taken where nobody says: a weight of 25 % then lies within 18 % to 32 % two times in three. @source common practice, no source */
export const usualConcentration = 40;

/** Ranks of the shares, 1 for the highest; shares that differ by rounding only have one rank. */
function ranksOf(shares: readonly number[]): readonly number[] {
  return shares.map((share) => 1 + shares.filter((other) => other > share + 1e-12).length);
}

/** Draws weights for all criteria; what has no weight of the owner's has none in any draw. */
export function weightDraw(choice: WeightChoice, shares: readonly number[]): WeightDraw {
  if (choice.kind === "owners") return (_, into) => into.set(shares);
  if (choice.kind === "near-owners") return nearbyWeights(shares, choice.concentration);
  const weighing = shares.flatMap((share, at) => (share > 0 ? [at] : []));
  const ranks = ranksOf(weighing.map((at) => shares[at] ?? 0));
  const draw = choice.kind === "any" ? evenWeights : orderedWeights(ranks);
  const drawn = new Float64Array(weighing.length);
  return (generator, into) => {
    draw(generator, drawn);
    into.fill(0);
    for (let order = 0; order < weighing.length; order += 1) into[weighing[order] as number] = drawn[order] as number;
  };
}
