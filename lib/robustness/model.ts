import type { Distribution } from "#lib/sampling";

/** A corner of the line from figures to values. In rising order of figure; two at one figure are a step. */
export type CurveCorner = Readonly<{ figure: number; value: number }>;

/**
 * What a bid is worth on one criterion, from 0 to 1 on the owner's anchors.
 * - `known`: one value.
 * - `between`: an unproven or ranged claim, anywhere between two values alike.
 * - `drawn`: a figure with a distribution, and the owner's line from figures to values: straight between its corners,
 *   level beyond them. Plain data, so that a worker of the browser can be sent it.
 */
export type CriterionValue = Readonly<
  | { kind: "known"; value: number }
  | { kind: "between"; low: number; high: number }
  | { kind: "drawn"; distribution: Distribution; curve: readonly CurveCorner[]; low: number; high: number }
>;

/** One bid with its values in the order of the criteria. A bid that fails a gate is out: points never buy that back. */
export type BidValues = Readonly<{ bid: string; standing: "in" | "out"; values: readonly CriterionValue[] }>;

/** Bids on the same criteria. Shares are the owner's weights: 0 or more, together 1, one per criterion. */
export type Comparison = Readonly<{
  criteria: readonly string[];
  shares: readonly number[];
  bids: readonly BidValues[];
}>;

/** Totals closer than this are one total: they differ by the rounding of sums only. */
export const sameTotal = 1e-12;

/** The bids that are not out, in the order given. */
export const inContention = ({ bids }: Comparison): readonly BidValues[] =>
  bids.filter(({ standing }) => standing === "in");

/** Least and greatest value that may be. */
export function valueEnds(value: CriterionValue): Readonly<{ low: number; high: number }> {
  return value.kind === "known" ? { low: value.value, high: value.value } : { low: value.low, high: value.high };
}

/** The value that counts where one has to: the middle of what may be. */
export function middleValue(value: CriterionValue): number {
  const { low, high } = valueEnds(value);
  return (low + high) / 2;
}

/** @throws RangeError where a bid has not one value per criterion: the caller matched the two up amiss */
export function checkComparison({ criteria, shares, bids }: Comparison): void {
  const sum = shares.reduce((total, share) => total + share, 0);
  if (shares.length !== criteria.length || shares.some((share) => !(share >= 0)) || Math.abs(sum - 1) > 1e-9)
    throw new RangeError(`expected ${criteria.length} shares of 0 or more that add up to 1, got ${shares.join(", ")}`);
  for (const { bid, values } of bids)
    if (values.length !== criteria.length)
      throw new RangeError(`${bid} has ${values.length} values for ${criteria.length} criteria`);
}
