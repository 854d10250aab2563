import { weightShares } from "#lib/criteria";

type Weighed = Readonly<{ valueFunction: Readonly<{ kind: string }>; weight: string }>;

/** Points as typed; 0 where they can't be read yet, which the field itself says. */
const pointsOf = (text: string): number => (/^\s*\d+(\.\d+)?\s*$/.test(text) ? Number(text) : 0);

/** Each criterion's part of all points as they stand in the form, in the order given. */
export const typedShares = (criteria: readonly Weighed[]): readonly number[] =>
  weightShares(criteria.map(({ valueFunction, weight }) => ({ valueFunction, weight: pointsOf(weight) })));
