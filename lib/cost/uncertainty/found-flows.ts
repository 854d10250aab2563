import type { CostFlow } from "../model";
import type { ShapeYear } from "./flow-shapes";
import type { CostOfBid, UncertainInput } from "./model";

/** Flows under a name that stays the same while inputs move: line, part, and a number where a part comes twice. */
export type FlowsByName = ReadonlyMap<string, CostFlow>;

export function flowsByName(bid: CostOfBid, values: Float64Array): FlowsByName {
  const flows = new Map<string, CostFlow>();
  for (const { line, flow } of bid.flowsAt(values)) {
    let name = `${line.id} ${flow.part}`;
    while (flows.has(name)) name += "+";
    flows.set(name, flow);
  }
  return flows;
}

/** What is found of one flow at one choice of values: the inputs it is a product of, and its years. */
export type FoundTerm = Readonly<{
  inputs: readonly number[];
  recurrence: CostFlow["recurrence"];
  years: readonly ShapeYear[];
}>;

/** Differences this small beside the flow are the last digits of amounts that are rounded to 13. */
const negligible = 1e-10;

/** One flow at values of the inputs by index; empty years where the flow is not there. */
type StreamAt = (changes: readonly (readonly [number, number])[]) => readonly number[];

const size = (stream: readonly number[]) => stream.reduce((most, cents) => Math.max(most, Math.abs(cents)), 0);

/** How far an input is moved to see what it does. */
export const stepOf = ({ base }: UncertainInput): number => (base === 0 ? 1 : Math.abs(base) / 2);

/**
 * Takes a flow apart into products of inputs, each counted from its base: constant, single inputs, pairs and triples.
 * Nothing is known here of how a line makes its flows; mixed differences tell which products there are.
 * @source a function that is straight in each of its inputs is a sum of products of them (multi-affine), derived
 */
export function productsOf(
  streamAt: StreamAt,
  inputs: readonly UncertainInput[],
  proportions: readonly number[],
): readonly Readonly<{ inputs: readonly number[]; stream: readonly number[] }>[] {
  const step = (index: number) => stepOf(inputs[index] as UncertainInput);
  const at = (those: readonly number[]) =>
    streamAt(those.map((index) => [index, (inputs[index]?.base ?? 0) + step(index)] as const));
  const streams = new Map<string, readonly number[]>();
  const known = (those: readonly number[]) => {
    const key = those.join();
    const found = streams.get(key) ?? at(those);
    streams.set(key, found);
    return found;
  };
  /** The mixed difference over all subsets, with the sign by how many are left out. */
  const mixed = (those: readonly number[]): readonly number[] => {
    const sums = new Array<number>(known([]).length).fill(0);
    for (let mask = 0; mask < 1 << those.length; mask += 1) {
      const subset = those.filter((_, bit) => mask & (1 << bit));
      const sign = (those.length - subset.length) % 2 === 0 ? 1 : -1;
      for (const [year, cents] of known(subset).entries()) sums[year] = (sums[year] ?? 0) + sign * cents;
    }
    return sums;
  };
  const scale = Math.max(size(known([])), ...proportions.map((index) => size(known([index]))));
  const present = (those: readonly number[]) => {
    const stream = mixed(those);
    if (size(stream) <= negligible * scale) return [];
    const divisor = those.reduce((product, index) => product * step(index), 1);
    // years in which the products cancel out hold only rounding
    return [
      { inputs: those, stream: stream.map((cents) => (Math.abs(cents) <= negligible * scale ? 0 : cents / divisor)) },
    ];
  };
  const singles = proportions.flatMap((index) => present([index]));
  const moving = proportions.filter((index) => size(mixed([index])) > negligible * scale || scale === 0);
  const pairs = moving.flatMap((one, at1) => moving.slice(at1 + 1).flatMap((other) => present([one, other])));
  const paired = (one: number, other: number) => pairs.some(({ inputs: pair }) => pair[0] === one && pair[1] === other);
  const triples = pairs.flatMap(({ inputs: [one = 0, other = 0] }) =>
    moving.flatMap((third) =>
      third > other && paired(one, third) && paired(other, third) ? present([one, other, third]) : [],
    ),
  );
  return [...present([]), ...singles, ...pairs, ...triples];
}

/**
 * The whole power of each growth factor that a flow carries in each year, or null where it is no whole power.
 * Read off at a point where every amount is away from 0.
 */
export function powersOf(
  streamAt: StreamAt,
  inputs: readonly UncertainInput[],
  { growths, proportions }: Readonly<{ growths: readonly number[]; proportions: readonly number[] }>,
): readonly (readonly (readonly [number, number])[])[] | null {
  const away = proportions.map((index) => {
    const input = inputs[index] as UncertainInput;
    return [index, input.base + stepOf(input)] as const;
  });
  const before = streamAt(away);
  const powers: (readonly [number, number])[][] = before.map(() => []);
  for (const [order, index] of growths.entries()) {
    const { acts, base } = inputs[index] as UncertainInput;
    if (acts.kind !== "growth") continue;
    const after = streamAt([...away, [index, base + 0.01]]);
    const ratio = acts.factor(base + 0.01) / acts.factor(base);
    for (const [year, cents] of before.entries()) {
      if (cents === 0) continue;
      const power = Math.log((after[year] ?? 0) / cents) / Math.log(ratio);
      const whole = Math.round(power);
      if (!(Math.abs(power - whole) < 1e-6 && whole >= 0 && whole < before.length)) return null;
      if (whole > 0) powers[year]?.push([order, whole]);
    }
  }
  return powers;
}
