import { breakEven } from "../break-even";
import { baseValues, bidOf, costAt, inputIndex, valuesWith } from "./cost-at";
import type { CostModel } from "./model";

/** The values of an input between which is looked. */
export type Bracket = Readonly<{ from: number; to: number }>;

/** Which two bids, which input, and between which values of it to look. */
export type TieQuestion = Bracket & Readonly<{ first: string; second: string; input: string }>;

/** Which bid costs less on a stretch of the input. */
export type CheaperStretch = Readonly<{ from: number; to: number; cheaper: "first" | "second" | "neither" }>;

/**
 * The values of one input at which two bids cost the same, everything else as entered.
 * - `line`: both costs are straight lines in it, so the one value is exact; it may lie outside the bracket.
 * - `crossings`: every change of the cheaper bid that a fine grid over the bracket shows, each to the last digits.
 * - `steps`: an input of whole years jumps from one value to the next; the cheaper bid changes between two of them.
 */
export type TiedValues = Readonly<
  TieQuestion & {
    /** Which bid costs less where, over the bracket. */
    stretches: readonly CheaperStretch[];
  } & (
      | { kind: "line"; at: number | null; inside: boolean }
      | { kind: "crossings"; at: readonly number[] }
      | { kind: "steps"; between: readonly (readonly [number, number])[] }
      | { kind: "always-equal" }
    )
>;

/** Steps of the grid; two ties closer together than a step can be missed, and that is said. */
export const gridSteps = 240;
/** The growth of a price moves a cost one way only, so few steps show every tie. */
const growthSteps = 24;
/** Costs nearer than this many cents are the same. */
const sameCents = 1e-4;

/**
 * Finds where two bids tie in one input. Costs are whole evaluations, so nothing is assumed of how the input acts.
 * @throws RangeError if a bid or the input is not in the model, or the bracket is turned round
 * @source straight lines by their crossing; others by Brent’s method, Algorithms for Minimization without Derivatives, 1973
 */
export function tiedValues(model: CostModel, question: TieQuestion): TiedValues {
  const { from, to } = question;
  if (!(from < to)) throw new RangeError(`a bracket runs from a lower to a higher value, got ${from} to ${to}`);
  const [first, second] = [bidOf(model, question.first), bidOf(model, question.second)];
  const index = inputIndex(model, question.input);
  const input = model.inputs[index];
  const costs = (value: number) => {
    const values = valuesWith(model.inputs, [[index, value]]);
    return [costAt(model, first, values), costAt(model, second, values)] as const;
  };
  const gap = (value: number) => {
    const [one, other] = costs(value);
    return Math.abs(one - other) < sameCents ? 0 : one - other;
  };
  if (input?.acts.kind === "choice") return stepsBetween(question, gap);
  const alwaysEqual = { ...question, kind: "always-equal", stretches: [{ from, to, cheaper: "neither" }] } as const;
  // straight lines need no grid, which takes most of the time
  const line = input?.acts.kind === "proportion" ? lineThrough(costs, from, to) : null;
  if (line?.kind === "everywhere") return alwaysEqual;
  if (line !== null) {
    const at = line.kind === "at" ? line.value : null;
    const inside = at !== null && at >= from && at <= to;
    return {
      ...question,
      kind: "line",
      at,
      inside,
      stretches: stretchesOf(from, to, inside && at !== null ? [at] : [], gap),
    };
  }
  const steps = input?.acts.kind === "growth" ? growthSteps : gridSteps;
  const grid = Array.from({ length: steps + 1 }, (_, step) => from + ((to - from) * step) / steps);
  const gaps = grid.map(gap);
  if (gaps.every((one) => one === 0)) return alwaysEqual;
  const at = gaps.flatMap((one, step) => {
    const [here = from, next = to] = [grid[step], grid[step + 1]];
    const after = gaps[step + 1];
    if (one === 0) return [here];
    return after !== undefined && one * after < 0 ? [rootBetween(gap, here, next)] : [];
  });
  return { ...question, kind: "crossings", at, stretches: stretchesOf(from, to, at, gap) };
}

/** Both costs as straight lines, or null where either bends; three places in the bracket and one beyond are tried. */
function lineThrough(costs: (value: number) => readonly [number, number], from: number, to: number) {
  const [low, high] = [costs(from), costs(to)];
  const slopes = [(high[0] - low[0]) / (to - from), (high[1] - low[1]) / (to - from)] as const;
  const straight = [0.25, 0.618, 1.5].every((share) => {
    const value = from + share * (to - from);
    return costs(value).every((cost, which) => {
      const expected = (low[which] ?? 0) + (slopes[which] ?? 0) * (value - from);
      return Math.abs(cost - expected) <= 1e-9 * Math.max(Math.abs(cost), Math.abs(expected), 1);
    });
  });
  if (!straight) return null;
  // slopes that differ by rounding only are parallel
  const parallel = Math.abs(slopes[0] - slopes[1]) <= 1e-9 * Math.max(Math.abs(slopes[0]), Math.abs(slopes[1]));
  return breakEven({
    at: from,
    firstCost: low[0],
    secondCost: low[1],
    firstSlope: slopes[0],
    secondSlope: parallel ? slopes[0] : slopes[1],
  });
}

/** The cheaper bid between the ties. */
function stretchesOf(
  from: number,
  to: number,
  ties: readonly number[],
  gap: (value: number) => number,
): readonly CheaperStretch[] {
  const ends = [from, ...ties.filter((tie) => tie > from && tie < to), to];
  return ends.slice(1).map((end, at) => {
    const start = ends[at] ?? from;
    const middle = gap((start + end) / 2);
    return { from: start, to: end, cheaper: middle === 0 ? "neither" : middle < 0 ? "first" : "second" };
  });
}

function stepsBetween(question: TieQuestion, gap: (value: number) => number): TiedValues {
  const [from, to] = [Math.ceil(question.from), Math.floor(question.to)];
  const values = Array.from({ length: Math.max(0, to - from + 1) }, (_, step) => from + step);
  const cheaper = (value: number) => {
    const here = gap(value);
    return here === 0 ? "neither" : here < 0 ? "first" : "second";
  };
  const stretches: CheaperStretch[] = [];
  for (const value of values) {
    const last = stretches.at(-1);
    const now = cheaper(value);
    if (last?.cheaper === now) stretches[stretches.length - 1] = { ...last, to: value };
    else stretches.push({ from: value, to: value, cheaper: now });
  }
  const between = stretches.slice(1).map((stretch, at) => [stretches[at]?.to ?? from, stretch.from] as const);
  return { ...question, kind: "steps", between, stretches };
}

/**
 * Where a continuous function is 0 between two places where its signs differ.
 * @source Brent 1973, chapter 4: inverse quadratic steps, halving where they stray
 */
export function rootBetween(gap: (value: number) => number, low: number, high: number): number {
  let [a, b, c] = [low, high, low];
  let [fa, fb, fc] = [gap(low), gap(high), gap(low)];
  let step = b - a;
  let before = step;
  for (let turn = 0; turn < 200; turn += 1) {
    if (fb * fc > 0) {
      [c, fc] = [a, fa];
      step = b - a;
      before = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const tolerance = 2 * Number.EPSILON * Math.abs(b) + 1e-15;
    const half = (c - b) / 2;
    if (fb === 0 || Math.abs(half) <= tolerance) return b;
    if (Math.abs(before) >= tolerance && Math.abs(fa) > Math.abs(fb)) {
      const s = fb / fa;
      const [q0, r] = [fa / fc, fb / fc];
      let p = a === c ? 2 * half * s : s * (2 * half * q0 * (q0 - r) - (b - a) * (r - 1));
      let q = a === c ? 1 - s : (q0 - 1) * (r - 1) * (s - 1);
      if (p > 0) q = -q;
      p = Math.abs(p);
      if (2 * p < Math.min(3 * half * q - Math.abs(tolerance * q), Math.abs(before * q))) {
        before = step;
        step = p / q;
      } else {
        step = half;
        before = half;
      }
    } else {
      step = half;
      before = half;
    }
    [a, fa] = [b, fb];
    b += Math.abs(step) > tolerance ? step : Math.sign(half) * tolerance;
    fb = gap(b);
  }
  return b;
}

/** How an answer is told: names of the bids and of the input, and how a value of the input is shown. */
export type TieWords = Readonly<{ nameOf: (bid: string) => string; input: string; show: (value: number) => string }>;

/** The answer in one or two sentences, with the bracket. */
export function explainTies(tied: TiedValues, { nameOf, input, show }: TieWords): string {
  const [first, second] = [nameOf(tied.first), nameOf(tied.second)];
  const bracket = `from ${show(tied.from)} to ${show(tied.to)}`;
  const name = (cheaper: CheaperStretch["cheaper"]) => (cheaper === "first" ? first : second);
  const always = tied.stretches[0]?.cheaper ?? "neither";
  switch (tied.kind) {
    case "always-equal":
      return `${first} and ${second} cost the same at every value of ${input} ${bracket}.`;
    case "line": {
      if (tied.at === null)
        return `${input} moves both alike, so it can’t decide: ${name(always)} costs less at every value.`;
      const meets = `${first} and ${second} cost the same at ${show(tied.at)}`;
      if (tied.inside)
        return `${meets}, looked for ${bracket}. Below that ${name(tied.stretches[0]?.cheaper ?? always)} costs less, above it ${name(tied.stretches.at(-1)?.cheaper ?? always)}.`;
      return `Never ${bracket}: there ${name(always)} costs less throughout. ${meets}, outside what was looked at.`;
    }
    case "crossings": {
      if (tied.at.length === 0) return `Never ${bracket}: there ${name(always)} costs less throughout.`;
      const places = tied.at.map(show).join(" and at ");
      const parts = tied.stretches
        .filter(({ cheaper }) => cheaper !== "neither")
        .map(({ from, to, cheaper }) => `${name(cheaper)} from ${show(from)} to ${show(to)}`);
      return `${first} and ${second} cost the same at ${places}. The cheaper one is ${parts.join(", then ")}.`;
    }
    case "steps": {
      if (tied.between.length === 0)
        return `Never ${bracket}: there ${always === "neither" ? "both cost the same" : `${name(always)} costs less`} throughout.`;
      const parts = tied.stretches.map(({ from, to, cheaper }) => {
        const where = from === to ? `at ${show(from)}` : `from ${show(from)} to ${show(to)}`;
        return cheaper === "neither" ? `both alike ${where}` : `${name(cheaper)} ${where}`;
      });
      return `The cheaper one is ${parts.join(", then ")}.`;
    }
  }
}

/** The value of the input in the cost as entered, and what the two bids cost there: where an answer starts. */
export function tieStart(
  model: CostModel,
  question: TieQuestion,
): Readonly<{ value: number; first: number; second: number }> {
  const values = baseValues(model.inputs);
  return {
    value: values[inputIndex(model, question.input)] ?? Number.NaN,
    first: costAt(model, bidOf(model, question.first), values),
    second: costAt(model, bidOf(model, question.second), values),
  };
}
