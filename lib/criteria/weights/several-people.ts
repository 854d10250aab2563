import { sharesOf, type WeightShares } from "./model";

/** The weights of one person. */
export type PersonsWeights = Readonly<{ person: string; shares: WeightShares }>;

/** What several people's weights come to for one criterion: their mean, and how far they lie apart. */
export type CombinedWeight = Readonly<{
  criterion: string;
  mean: number;
  low: Readonly<{ share: number; person: string }>;
  high: Readonly<{ share: number; person: string }>;
  /** Each person's own share, in the order of the people; 0 where a person gave none. */
  each: readonly Readonly<{ person: string; share: number }>[];
}>;

/** Several people's weights side by side, and their mean as shares. */
export type CombinedWeights = Readonly<{ shares: WeightShares; criteria: readonly CombinedWeight[] }>;

/**
 * Combines weights criterion by criterion. Every person counts alike, and each person's weights count as shares, so
 * that whoever gives more points has no more say.
 * @param people at least one
 * @source arithmetic mean of shares, which keeps their sum; common practice, no source
 */
export function combinedWeights(criteria: readonly string[], people: readonly PersonsWeights[]): CombinedWeights {
  const rows = criteria.map((criterion): CombinedWeight => {
    const each = people.map(({ person, shares }) => ({
      person,
      share: shares.find((one) => one.criterion === criterion)?.share ?? 0,
    }));
    const rising = each.toSorted((one, other) => one.share - other.share);
    const nobody = { share: 0, person: "" };
    return {
      criterion,
      mean: each.reduce((sum, { share }) => sum + share, 0) / Math.max(1, each.length),
      low: rising[0] ?? nobody,
      high: rising.at(-1) ?? nobody,
      each,
    };
  });
  return { shares: sharesOf(rows.map(({ criterion, mean }) => ({ criterion, weight: mean }))), criteria: rows };
}
