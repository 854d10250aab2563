import { namedStream, quantileOf } from "#lib/sampling";
import type { CostFlow } from "../model";
import { baseValues, costAt } from "./cost-at";
import type { FlowShape, ShapeYear } from "./flow-shapes";
import { type FlowsByName, type FoundTerm, flowsByName, powersOf, productsOf, stepOf } from "./found-flows";
import type { CostModel, CostOfBid, UncertainInput } from "./model";

/** A product of inputs (each less its base) × a scale × the worth of a shape. */
export type Term = Readonly<{ inputs: readonly number[]; scale: number; shape: number }>;

/** Terms that hold at one choice of values of some inputs; an empty choice always holds. */
export type Block = Readonly<{ choices: readonly number[]; at: ReadonlyMap<string, readonly Term[]> }>;

/**
 * A bid ready for many draws. `direct`: its flows could not be taken apart so that they agree with the true cost, so
 * each draw runs the true cost; that is slow and right.
 */
export type CompiledBid = Readonly<
  { kind: "compiled"; bid: string; blocks: readonly Block[] } | { kind: "direct"; bid: string; cost: CostOfBid }
>;

/** Shapes that all bids of a model share, each kept once. */
export type ShapeList = Readonly<{ shapes: FlowShape[]; indexOf: (shape: FlowShape) => number }>;

export function shapeList(): ShapeList {
  const shapes: FlowShape[] = [];
  const known = new Map<string, number>();
  return {
    shapes,
    indexOf: (shape) => {
      const key = JSON.stringify([
        shape.recurrence,
        shape.years.map(({ year, weight, powers }) => [year, weight.toPrecision(11), powers]),
      ]);
      const index = known.get(key) ?? shapes.push(shape) - 1;
      known.set(key, index);
      return index;
    },
  };
}

/** More combinations of values than this in one flow are not worth taking apart. */
const mostCombinations = 400;

const differs = (one: CostFlow | undefined, other: CostFlow | undefined): boolean =>
  one?.stream.length !== other?.stream.length ||
  one?.recurrence !== other?.recurrence ||
  (one?.stream.some((cents, year) => {
    const most = Math.max(Math.abs(cents), Math.abs(other?.stream[year] ?? 0));
    return Math.abs(cents - (other?.stream[year] ?? 0)) > 1e-11 * most;
  }) ??
    false);

/** The values that an input of choice can take. */
const valuesOf = ({ distribution }: UncertainInput): readonly number[] =>
  distribution.kind === "discrete"
    ? distribution.values.map(({ value }) => value)
    : distribution.kind === "fixed"
      ? [distribution.value]
      : [];

export const choiceKey = (values: readonly number[]): string => values.join(" ");

/** Takes a bid apart. @returns terms that are not held against the true cost yet; null where it can't be done */
function takenApart(model: CostModel, bid: CostOfBid, list: ShapeList): readonly Block[] | null {
  const { inputs } = model;
  const base = baseValues(inputs);
  const seen = new Map<string, FlowsByName>();
  const flowsWith = (changes: readonly (readonly [number, number])[]): FlowsByName => {
    const values = base.slice();
    for (const [index, value] of changes) values[index] = value;
    const key = values.join();
    const found = seen.get(key) ?? flowsByName(bid, values);
    seen.set(key, found);
    return found;
  };

  const those = (kind: UncertainInput["acts"]["kind"]) =>
    inputs.flatMap((input, index) => (input.acts.kind === kind ? [index] : []));
  const [proportions, growths, allChoices] = [those("proportion"), those("growth"), those("choice")];
  if (allChoices.some((index) => valuesOf(inputs[index] as UncertainInput).length === 0)) return null;
  /** Inputs are tried at the base and where every amount is away from it: a price of 0 hides what it would do. */
  const away = proportions.map((index) => {
    const input = inputs[index] as UncertainInput;
    return [index, input.base + stepOf(input)] as const;
  });
  const tried = (index: number): readonly number[] => {
    const input = inputs[index] as UncertainInput;
    if (input.acts.kind === "choice") return valuesOf(input);
    return [input.base + (input.acts.kind === "growth" ? 0.01 : stepOf(input))];
  };
  const anyDiffers = (one: FlowsByName, other: FlowsByName) =>
    [...one, ...other].some(([name]) => differs(one.get(name), other.get(name)));
  /** Lives of other bids’ lines move nothing here. */
  const choices = allChoices.filter((index) =>
    [[], away].some((start) =>
      tried(index).some((v) => anyDiffers(flowsWith(start), flowsWith([...start, [index, v]]))),
    ),
  );
  // a part that has no flow at the base, as a value left at the end of the last life, may have one at another choice
  const chosenAway = choices.flatMap((index) =>
    valuesOf(inputs[index] as UncertainInput).map((value) => [...away, [index, value] as const]),
  );
  const starts: readonly (readonly (readonly [number, number])[])[] = [[], away, ...chosenAway];
  const trialsOf = (index: number) =>
    starts.flatMap((start) => {
      const without = start.filter(([other]) => other !== index);
      return tried(index).map((value) => [flowsWith(without), flowsWith([...without, [index, value]])] as const);
    });
  const trials = new Map([...proportions, ...growths, ...choices].map((index) => [index, trialsOf(index)]));
  const moves = (index: number, name: string) =>
    trials.get(index)?.some(([before, after]) => differs(before.get(name), after.get(name))) ?? false;

  const names = new Set([flowsWith([]), ...seen.values()].flatMap((flows) => [...flows.keys()]));
  const blocks = new Map<string, { choices: readonly number[]; at: Map<string, Term[]> }>();
  for (const name of names) {
    const [moving, growing, choosing] = [proportions, growths, choices].map((indexes) =>
      indexes.filter((index) => moves(index, name)),
    ) as [number[], number[], number[]];
    const combinations = choosing.reduce<readonly (readonly number[])[]>(
      (lists, index) => lists.flatMap((list1) => valuesOf(inputs[index] as UncertainInput).map((v) => [...list1, v])),
      [[]],
    );
    if (combinations.length > mostCombinations) return null;
    const blockKey = choosing.join();
    const block = blocks.get(blockKey) ?? { choices: choosing, at: new Map<string, Term[]>() };
    blocks.set(blockKey, block);
    for (const combination of combinations) {
      const chosen = combination.map((value, order) => [choosing[order] ?? -1, value] as const);
      const streamAt = (changes: readonly (readonly [number, number])[]) =>
        flowsWith([...chosen, ...changes]).get(name)?.stream ?? [0];
      const recurrence = flowsWith(chosen).get(name)?.recurrence ?? "single";
      const powers = powersOf(streamAt, inputs, { growths: growing, proportions: moving });
      if (powers === null) return null;
      const key = choiceKey(combination);
      const terms = block.at.get(key) ?? [];
      block.at.set(key, terms);
      for (const { inputs: product, stream } of productsOf(streamAt, inputs, moving)) {
        const found = { inputs: product, recurrence, years: shapeYears(stream, powers, growing, inputs, growths) };
        addTerm(terms, found, list);
      }
    }
  }
  return [...blocks.values()];
}

/** The years of a stream with what growth they carry at the base taken out. */
function shapeYears(
  stream: readonly number[],
  powers: readonly (readonly (readonly [number, number])[])[],
  growing: readonly number[],
  inputs: readonly UncertainInput[],
  growths: readonly number[],
): readonly ShapeYear[] {
  return stream.flatMap((cents, year) => {
    if (cents === 0) return [];
    const carried = (powers[year] ?? []).map(([order, power]) => [growing[order] ?? -1, power] as const);
    const atBase = carried.reduce((product, [index, power]) => {
      const input = inputs[index] as UncertainInput;
      return input.acts.kind === "growth" ? product * input.acts.factor(input.base) ** power : product;
    }, 1);
    return [
      {
        year,
        weight: cents / atBase,
        powers: carried.map(([index, power]) => [growths.indexOf(index), power] as const),
      },
    ];
  });
}

/** Adds a found term: its first weight becomes its scale, so that lines of unlike amounts share a shape. */
function addTerm(terms: Term[], { inputs, recurrence, years }: FoundTerm, list: ShapeList): void {
  const scale = years[0]?.weight;
  if (scale === undefined) return;
  const shape = list.indexOf({ recurrence, years: years.map((one) => ({ ...one, weight: one.weight / scale })) });
  const same = terms.findIndex((term) => term.shape === shape && term.inputs.join() === inputs.join());
  const before = terms[same];
  if (before === undefined) terms.push({ inputs, scale, shape });
  else terms[same] = { ...before, scale: before.scale + scale };
}

/** Draws at least on which a compiled bid is held against the true cost. */
const heldDraws = 8;
/** Relative to all money that flows; far above rounding, far below a cent in a million dollars. */
const heldWithin = 1e-9;

/** The values of a few draws that take no part in any result; every value of every choice comes up. */
function trialValues(inputs: readonly UncertainInput[]): readonly Float64Array[] {
  const stream = namedStream(0, "held against the true cost");
  const quantiles = inputs.map(({ distribution }) => quantileOf(distribution));
  const draws = Math.max(heldDraws, ...inputs.map((input) => valuesOf(input).length));
  return Array.from({ length: draws }, (_, draw) =>
    Float64Array.from(quantiles, (quantile, index) => {
      const chosen = valuesOf(inputs[index] as UncertainInput);
      const drawn = quantile(stream.nextShare());
      return chosen[draw % chosen.length] ?? drawn;
    }),
  );
}

/**
 * Prepares a bid for many draws, and holds what was found against the true cost on a few draws.
 * @param costBy the cost by the terms, as a function of the values
 */
export function compiledBid(
  model: CostModel,
  bid: CostOfBid,
  list: ShapeList,
  costBy: (blocks: readonly Block[]) => (values: Float64Array) => number,
): CompiledBid {
  const direct = { kind: "direct", bid: bid.bid, cost: bid } as const;
  const blocks = takenApart(model, bid, list);
  if (blocks === null) return direct;
  const byTerms = costBy(blocks);
  const agrees = trialValues(model.inputs).every((values) => {
    const flowing = bid
      .flowsAt(values)
      .reduce((sum, { flow }) => sum + flow.stream.reduce((all, cents) => all + Math.abs(cents), 0), 0);
    return Math.abs(byTerms(values) - costAt(model, bid, values)) <= heldWithin * Math.max(flowing, 1);
  });
  return agrees ? { kind: "compiled", bid: bid.bid, blocks } : direct;
}
