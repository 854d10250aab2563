import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  actsOf,
  baseValues,
  type CostModel,
  costAt,
  drawCosts,
  type LineInput,
  linesModel,
  sampledModel,
  valuesWith,
} from "#lib/cost";
import { drawnToEnd } from "#lib/sampling";
import { workedTerms } from "../../checks/cost-example";
import { area, conventions, lineInput, linesOf, perHour, setting, workedBids, workedInputs } from "./worked";

const all = ["a", "b", "c"] as const;
const everywhere = (line: string) => all.map((bid) => ({ bid, line }));

/** One input of every kind, several of them on the same lines. */
const manyInputs: readonly LineInput[] = [
  lineInput({
    id: "price index",
    distribution: { kind: "uniform", low: 0.9, high: 1.3 },
    base: 1,
    target: {
      kind: "amount",
      of: [...everywhere("carpet"), ...everywhere("base"), ...everywhere("grooming")],
      part: "price",
      move: { kind: "in-proportion" },
    },
  }),
  lineInput({
    id: "wage",
    distribution: { kind: "triangular", low: perHour(36), likely: perHour(48), high: perHour(70) },
    base: perHour(48),
    target: { kind: "amount", of: everywhere("grooming"), part: "unit-price", move: { kind: "set" } },
  }),
  ...workedInputs,
  lineInput({
    id: "fee",
    distribution: { kind: "lognormal", mean: 50, variation: 0.3 },
    base: 40,
    target: { kind: "amount", of: everywhere("carpet"), part: "removal-price", move: { kind: "add", perUnit: 3 } },
  }),
  lineInput({
    id: "life of a",
    distribution: {
      kind: "discrete",
      values: [7, 8, 9, 10, 12, 20, 25].map((value) => ({ value, chance: 1 / 7 })),
    },
    base: 10,
    target: { kind: "life", of: [{ bid: "a", line: "carpet" }] },
  }),
  lineInput({
    id: "life of b and c",
    distribution: {
      kind: "discrete",
      values: [
        { value: 8, chance: 0.3 },
        { value: 11, chance: 0.7 },
      ],
    },
    base: 10,
    target: {
      kind: "life",
      of: [
        { bid: "b", line: "carpet" },
        { bid: "c", line: "carpet" },
      ],
    },
  }),
  lineInput({
    id: "growth of carpet",
    distribution: { kind: "uniform", low: -0.02, high: 0.04 },
    base: 0,
    target: { kind: "escalation", of: [...everywhere("carpet"), ...everywhere("repairs")] },
  }),
  lineInput({
    id: "growth of labour",
    distribution: { kind: "uniform", low: 0, high: 0.05 },
    base: 0.02,
    target: { kind: "escalation", of: everywhere("grooming") },
  }),
  lineInput({
    id: "inflation",
    distribution: { kind: "uniform", low: 0.01, high: 0.06 },
    base: 0.025,
    target: { kind: "inflation", nominalRate: 0.0557, fixedPrices: everywhere("impact-test") },
  }),
];

const midYear = { area, conventions: { ...conventions, timing: "mid-year" } } as const;

/** Costs by the taken-apart model at given values, one draw. */
function sampledAt(model: CostModel, values: Float64Array): readonly number[] {
  const costs = model.bids.map(() => new Float64Array(1));
  sampledModel(model).costs(
    Array.from(values, (value) => Float64Array.of(value)),
    costs,
    0,
  );
  return costs.map(([cost = Number.NaN]) => cost);
}

describe("sampledModel", () => {
  test("agrees with the true cost at every value of every kind of input, at both timings", () => {
    for (const place of [setting, midYear]) {
      const model = linesModel(workedBids, manyInputs, place);
      const prepared = sampledModel(model);
      expect(prepared.bids.map(({ how }) => how)).toEqual(["compiled", "compiled", "compiled"]);
      const chance = fc.double({ min: 0, max: 1, noNaN: true });
      const values = fc.tuple(
        ...manyInputs.map(({ distribution, base }) =>
          distribution.kind === "discrete"
            ? fc.constantFrom(...distribution.values.map(({ value }) => value))
            : chance.map((share) => base * (0.3 + 1.5 * share)),
        ),
      );
      fc.assert(
        fc.property(values, (drawn) => {
          const costs = model.bids.map(() => new Float64Array(1));
          prepared.costs(
            drawn.map((value) => Float64Array.of(value)),
            costs,
            0,
          );
          for (const [at, bid] of model.bids.entries()) {
            const truth = costAt(model, bid, Float64Array.from(drawn));
            expect(Math.abs((costs[at]?.[0] ?? 0) / truth - 1)).toBeLessThan(1e-10);
          }
        }),
        { numRuns: 60 },
      );
    }
  });

  test("finds what a price of zero in the bid as entered would do", () => {
    const lines = linesOf({ ...workedTerms.a, carpet: "$0/ft²", life: "8 years" });
    const input = lineInput({
      id: "carpet",
      distribution: { kind: "uniform", low: 0, high: 5000 },
      base: 0,
      target: { kind: "amount", of: [{ bid: "a", line: "carpet" }], part: "price", move: { kind: "set" } },
    });
    const growth = lineInput({
      id: "growth",
      distribution: { kind: "uniform", low: 0, high: 0.03 },
      base: 0,
      target: { kind: "escalation", of: [{ bid: "a", line: "carpet" }] },
    });
    const model = linesModel([{ bid: "a", lines }], [input, growth], setting);
    const values = Float64Array.of(4321, 0.021);
    const [bid] = model.bids;
    expect(bid && Math.abs((sampledAt(model, values)[0] ?? 0) / costAt(model, bid, values) - 1)).toBeLessThan(1e-11);
  });

  test("runs the true cost where a rule is neither straight nor a power", () => {
    const model = linesModel(workedBids.slice(0, 1), workedInputs, setting);
    const [bid] = model.bids;
    if (bid === undefined) throw new RangeError("no bid");
    // more than 150 hours of grooming cost overtime: no straight line
    const flowsAt = (values: ArrayLike<number>) => {
      const overtime = Math.max(0, (values[2] ?? 0) / (baseValues(model.inputs)[2] ?? 1) - 1.3);
      return bid.flowsAt(values).map(({ line, flow }) => ({
        line,
        flow: line.id === "grooming" ? { ...flow, stream: flow.stream.map((cents) => cents * (1 + overtime)) } : flow,
      }));
    };
    const bent: CostModel = { ...model, bids: [{ bid: "a", flowsAt }] };
    expect(sampledModel(bent).bids).toEqual([{ bid: "a", how: "direct" }]);
    const values = valuesWith(model.inputs, [[2, (baseValues(model.inputs)[2] ?? 0) * 1.7]]);
    expect(sampledAt(bent, values)[0]).toBe(costAt(bent, { bid: "a", flowsAt }, values));
  });

  test("gives the cost as entered where nothing is uncertain", () => {
    const model = linesModel(workedBids, [], setting);
    const { bids } = drawnToEnd(drawCosts(model, { seed: 1, samples: 3 }));
    expect(bids.map(({ costs }) => Math.round(costs[2] ?? 0))).toEqual([115_458_333, 125_467_692, 146_607_003]);
  });
});

describe("drawCosts", () => {
  const model = linesModel(workedBids, manyInputs, setting);
  const drawn = (seed: number, samples: number, that = model) => drawnToEnd(drawCosts(that, { seed, samples }));

  test("gives the same bytes for the same seed, and begins alike however many are drawn", () => {
    const [one, again, longer] = [drawn(5, 5000), drawn(5, 5000), drawn(5, 9000)];
    for (const [at, { costs }] of one.bids.entries()) {
      expect(again.bids[at]?.costs).toEqual(costs);
      expect(longer.bids[at]?.costs.subarray(0, 5000)).toEqual(costs);
    }
    expect(drawn(6, 10).bids[0]?.costs).not.toEqual(one.bids[0]?.costs.subarray(0, 10));
  });

  test("leaves the draws of a bid as they were when another bid and its inputs go", () => {
    const alone = linesModel(
      workedBids.slice(1, 2),
      manyInputs.filter(({ id }) => id !== "life of a"),
      setting,
    );
    const [b] = drawn(5, 2000, alone).bids;
    const before = drawn(5, 2000).bids[1]?.costs ?? new Float64Array();
    expect(b?.costs.every((cost, draw) => Math.abs(cost / (before[draw] ?? 0) - 1) < 1e-12)).toBe(true);
  });

  test("reports how far it is, and can be left at any report", () => {
    const reports = [...drawCosts(model, { seed: 5, samples: 10_000 })];
    expect(reports).toEqual([
      { done: 4096, of: 10_000 },
      { done: 8192, of: 10_000 },
      { done: 10_000, of: 10_000 },
    ]);
    const left = drawCosts(model, { seed: 5, samples: 1_000_000 });
    expect(left.next().value).toEqual({ done: 4096, of: 1_000_000 });
    expect(left.return(undefined as never).done).toBe(true);
  });

  test("moves inputs of one driver by the very same luck, or the opposite one", () => {
    const pair = (share: number) =>
      ["a", "b"].map((bid) =>
        lineInput({
          id: `wage of ${bid}`,
          distribution: { kind: "uniform", low: 0, high: 2 * perHour(48) },
          base: perHour(48),
          target: { kind: "amount", of: [{ bid, line: "grooming" }], part: "unit-price", move: { kind: "set" } },
          driver: { name: "wages", share: bid === "a" ? 1 : share },
        }),
      );
    for (const [share, sign] of [
      [1, 1],
      [-1, -1],
    ] as const) {
      const bids = drawn(9, 500, linesModel(workedBids.slice(0, 2), pair(share), setting)).bids;
      const [a, b] = bids.map(({ costs }) => costs);
      const rises = (costs: Float64Array | undefined, draw: number) =>
        Math.sign((costs?.[draw] ?? 0) - (costs?.[0] ?? 0));
      for (let draw = 1; draw < 500; draw += 1) expect(rises(a, draw)).toBe(sign * rises(b, draw));
    }
  });
});

test("actsOf knows that inflation without fixed prices moves the rate alone", () => {
  expect(actsOf({ kind: "inflation", nominalRate: 0.05, fixedPrices: [] })).toEqual({ kind: "rate" });
});
