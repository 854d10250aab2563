/** One criterion with its part of all weights, 0 to 1. */
export type WeightShare = Readonly<{ criterion: string; share: number }>;

/** Shares of criteria that add up to 1, in the order given; all 0 where nothing weighs. */
export type WeightShares = readonly WeightShare[];

/** Weights of 0 or more → shares. */
export function sharesOf(weights: readonly Readonly<{ criterion: string; weight: number }>[]): WeightShares {
  const sum = weights.reduce((total, { weight }) => total + weight, 0);
  return weights.map(({ criterion, weight }) => ({ criterion, share: sum > 0 ? weight / sum : 0 }));
}
