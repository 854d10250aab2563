import type { Comparison, CriterionValue, WeightChoice } from "#lib/robustness";
import { namedStream } from "#lib/sampling";

export const [bids, criteria, draws] = [20, 40, 100_000];

export const choices: readonly WeightChoice[] = [
  { kind: "any" },
  { kind: "owners-order" },
  { kind: "near-owners", concentration: 40 },
];

/** Parts of all values that are in doubt. */
export const doubts = [0, 0.25, 1] as const;

const points = Array.from({ length: criteria }, (_, at) => 10 + 90 * namedStream(1, `points/${at}`).nextShare());
const sum = points.reduce((total, one) => total + one, 0);

/** Bids with values of which the given part is in doubt. */
export function rankComparison(inDoubt: number): Comparison {
  const stream = namedStream(1, `values/${inDoubt}`);
  const value = (): CriterionValue => {
    const [one, other] = [stream.nextShare(), stream.nextShare()];
    if (stream.nextShare() >= inDoubt) return { kind: "known", value: one };
    return { kind: "between", low: Math.min(one, other), high: Math.max(one, other) };
  };
  return {
    criteria: points.map((_, at) => `criterion ${at}`),
    shares: points.map((one) => one / sum),
    bids: Array.from({ length: bids }, (_, at) => ({
      ...{ bid: `bid ${at}`, standing: "in" },
      values: points.map(value),
    })),
  };
}
