import type { Drawing } from "#lib/sampling";
import { inputDraws } from "./draw-inputs";
import type { CostModel } from "./model";
import { sampledModel } from "./sampled-model";

/** What is asked for. The seed is kept with the result. */
export type DrawingOrder = Readonly<{ seed: number; samples: number }>;

/** Costs of all bids in cents, draw by draw: the same place in two arrays is the same luck. */
export type CostDraws = Readonly<{
  seed: number;
  samples: number;
  bids: readonly Readonly<{ bid: string; how: "compiled" | "direct"; costs: Float64Array }>[];
}>;

/** Draws between two reports: a few milliseconds of work. */
const chunk = 4096;

/**
 * Draws costs, and reports after each chunk. Whoever asks for the next chunk may stop asking: nothing else is needed to
 * cancel. Same model, seed and number of samples give the same bytes; the first draws of more samples are the same too.
 */
export function* drawCosts(model: CostModel, { seed, samples }: DrawingOrder): Drawing<CostDraws> {
  const prepared = sampledModel(model);
  const draw = inputDraws(model.inputs, seed);
  const costs = prepared.bids.map(() => new Float64Array(samples));
  for (let done = 0; done < samples; ) {
    const count = Math.min(chunk, samples - done);
    const values = model.inputs.map(() => new Float64Array(count));
    draw(values);
    prepared.costs(values, model.inputs.length === 0 ? costs.map((all) => all.subarray(0, done + count)) : costs, done);
    done += count;
    yield { done, of: samples };
  }
  return {
    seed,
    samples,
    bids: prepared.bids.map(({ bid, how }, at) => ({ bid, how, costs: costs[at] as Float64Array })),
  };
}
