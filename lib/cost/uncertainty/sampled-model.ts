import { type Block, type CompiledBid, choiceKey, compiledBid, shapeList, type Term } from "./compiled-bid";
import { baseValues, costAt } from "./cost-at";
import { shapeWorths } from "./flow-shapes";
import type { CostModel } from "./model";

/** A model ready for many draws. */
export type SampledModel = Readonly<{
  /** How each bid is worked out, in the order of the model. */
  bids: readonly Readonly<{ bid: string; how: CompiledBid["kind"] }>[];
  /** Costs of every bid in cents at drawn values: one array per input, one array per bid to be filled from `start`. */
  costs: (values: readonly Float64Array[], into: readonly Float64Array[], start: number) => void;
}>;

/** Terms as flat arrays: for each its scale, its shape and up to three inputs, −1 for none. */
type FlatTerms = Readonly<{ scales: Float64Array; shapes: Int32Array; inputs: Int32Array }>;

function flatTerms(terms: readonly Term[]): FlatTerms {
  const inputs = new Int32Array(terms.length * 3).fill(-1);
  for (const [at, term] of terms.entries()) inputs.set(term.inputs, at * 3);
  return {
    scales: Float64Array.from(terms, ({ scale }) => scale),
    shapes: Int32Array.from(terms, ({ shape }) => shape),
    inputs,
  };
}

function sumOfTerms({ scales, shapes, inputs }: FlatTerms, worths: Float64Array, offsets: Float64Array): number {
  let sum = 0;
  for (let at = 0, next = 0; at < scales.length; at += 1, next += 3) {
    let value = (scales[at] as number) * (worths[shapes[at] as number] as number);
    const first = inputs[next] as number;
    if (first >= 0) {
      value *= offsets[first] as number;
      const second = inputs[next + 1] as number;
      if (second >= 0) {
        value *= offsets[second] as number;
        const third = inputs[next + 2] as number;
        if (third >= 0) value *= offsets[third] as number;
      }
    }
    sum += value;
  }
  return sum;
}

/** A block with its terms flat; a block of one choice finds them by the value itself. */
type FlatBlock = Readonly<{
  choices: readonly number[];
  always: FlatTerms | null;
  at: ReadonlyMap<number | string, FlatTerms>;
}>;

const none = flatTerms([]);

function flatBlock({ choices, at }: Block): FlatBlock {
  const entries = [...at].map(([key, terms]) => [choices.length === 1 ? Number(key) : key, flatTerms(terms)] as const);
  return { choices, always: choices.length === 0 ? (entries[0]?.[1] ?? none) : null, at: new Map(entries) };
}

function termsAt(block: FlatBlock, values: Float64Array): FlatTerms {
  if (block.always !== null) return block.always;
  const [first = 0] = block.choices;
  const key =
    block.choices.length === 1
      ? (values[first] as number)
      : choiceKey(block.choices.map((index) => values[index] as number));
  return block.at.get(key) ?? none;
}

/**
 * Takes the bids of a model apart once, so that a draw costs some hundred multiplications instead of a whole
 * evaluation. What the flows are is asked of the cost rules, never repeated here; a bid that does not agree with them
 * is worked out by them in every draw.
 */
export function sampledModel(model: CostModel): SampledModel {
  const { inputs } = model;
  const base = baseValues(inputs);
  const growthInputs = inputs.flatMap(({ acts }, index) =>
    acts.kind === "growth" ? [{ index, factor: acts.factor }] : [],
  );
  const { timing, rate: baseRate } = model.discountingAt(base);
  const fixedRate = movesRate(model) ? null : baseRate;
  const years = Math.max(
    0,
    ...model.bids.flatMap((bid) => bid.flowsAt(base).map(({ flow }) => flow.stream.length - 1)),
  );
  const list = shapeList();
  const factors = new Float64Array(growthInputs.length);
  const offsets = new Float64Array(inputs.length);

  /** Worths of all shapes known so far, at one set of values. */
  const prepared = () => {
    const worths = new Float64Array(list.shapes.length);
    const { fill } = shapeWorths(list.shapes, { timing, fixedRate, growths: growthInputs.length, years });
    return (values: Float64Array) => {
      for (const [order, { index, factor }] of growthInputs.entries()) factors[order] = factor(values[index] as number);
      fill(fixedRate ?? model.discountingAt(values).rate, factors, worths);
      for (let index = 0; index < offsets.length; index += 1)
        offsets[index] = (values[index] as number) - (base[index] as number);
      return worths;
    };
  };
  const compiled = model.bids.map((bid) =>
    compiledBid(model, bid, list, (blocks) => {
      const [at, flat] = [prepared(), blocks.map(flatBlock)];
      return (values) => {
        const worths = at(values);
        return flat.reduce((sum, block) => sum + sumOfTerms(termsAt(block, values), worths, offsets), 0);
      };
    }),
  );
  const worthsAt = prepared();
  const bids = compiled.map((one) => (one.kind === "compiled" ? one.blocks.map(flatBlock) : one.cost));
  const isCompiled = compiled.some(({ kind }) => kind === "compiled");

  return {
    bids: compiled.map(({ bid, kind }) => ({ bid, how: kind })),
    costs: (drawn, into, start) => {
      const values = new Float64Array(inputs.length);
      const count = drawn[0]?.length ?? (into[0]?.length ?? 0) - start;
      for (let draw = 0; draw < count; draw += 1) {
        for (let index = 0; index < values.length; index += 1)
          values[index] = (drawn[index] as Float64Array)[draw] as number;
        const worths = isCompiled ? worthsAt(values) : null;
        for (let at = 0; at < bids.length; at += 1) {
          const bid = bids[at] as (typeof bids)[number];
          const costs = into[at] as Float64Array;
          if (worths !== null && isBlocks(bid)) {
            let sum = 0;
            for (let block = 0; block < bid.length; block += 1)
              sum += sumOfTerms(termsAt(bid[block] as FlatBlock, values), worths, offsets);
            costs[start + draw] = sum;
          } else if (!isBlocks(bid)) costs[start + draw] = costAt(model, bid, values);
        }
      }
    },
  };
}

const isBlocks = <T>(bid: readonly FlatBlock[] | T): bid is readonly FlatBlock[] => Array.isArray(bid);

/** Whether any input moves the discounting: asked of the model, at its base and away from it. */
function movesRate({ inputs, discountingAt }: CostModel): boolean {
  const base = baseValues(inputs);
  const { rate } = discountingAt(base);
  return inputs.some(({ distribution }, index) => {
    const values = base.slice();
    return awayFrom(values[index] as number, distribution).some((value) => {
      values[index] = value;
      return discountingAt(values).rate !== rate;
    });
  });
}

const awayFrom = (base: number, distribution: CostModel["inputs"][number]["distribution"]): readonly number[] =>
  distribution.kind === "discrete" ? distribution.values.map(({ value }) => value) : [base + 0.001, base * 1.01];
