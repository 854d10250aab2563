import { quantileOf } from "#lib/sampling";
import { baseValues, costAt, valuesWith } from "./cost-at";
import type { CostModel } from "./model";

/** What one input does to one bid alone: everything else as entered, costs by a whole evaluation. Money is in cents. */
export type CostSwing = Readonly<{
  input: string;
  label: string;
  /** The input at its 10th and 90th percentile. */
  low: Readonly<{ value: number; cents: number }>;
  high: Readonly<{ value: number; cents: number }>;
  /** How far apart the two costs are. */
  swing: number;
}>;

/** The swings of a bid around its cost as entered, the widest first. */
export type CostSwings = Readonly<{ bid: string; cents: number; swings: readonly CostSwing[] }>;

/** Chances at whose values an input is tried. */
export const swingChances = [0.1, 0.9] as const;

/** What moves each bid's cost how far. A driver that inputs share is not pulled here: each input moves alone. */
export function costSwings(model: CostModel): readonly CostSwings[] {
  const { inputs } = model;
  const ends = inputs.map(({ distribution }) => {
    const quantile = quantileOf(distribution);
    return [quantile(swingChances[0]), quantile(swingChances[1])] as const;
  });
  return model.bids.map((bid) => ({
    bid: bid.bid,
    cents: costAt(model, bid, baseValues(inputs)),
    swings: inputs
      .map(({ id, label }, index) => {
        const [low, high] = ends[index] ?? [0, 0];
        const at = (value: number) => ({ value, cents: costAt(model, bid, valuesWith(inputs, [[index, value]])) });
        const [lowEnd, highEnd] = [at(low), at(high)];
        return { input: id, label, low: lowEnd, high: highEnd, swing: Math.abs(highEnd.cents - lowEnd.cents) };
      })
      .toSorted((one, other) => other.swing - one.swing),
  }));
}
