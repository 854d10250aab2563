import { describe, expect, test } from "vitest";
import { costOutcome } from "#lib/cost";

const draws = (...all: readonly (readonly number[])[]) => ({
  seed: 1,
  samples: all[0]?.length ?? 0,
  bids: all.map((costs, at) => ({ bid: "abc"[at] ?? "", how: "compiled" as const, costs: Float64Array.from(costs) })),
});

describe("costOutcome", () => {
  const outcome = costOutcome(draws([1, 2, 3, 4], [2, 2, 2, 2], [9, 9, 9, 9]));
  test("compares bids draw by draw, a tie as one half", () => {
    const pair = (bid: string, than: string) => outcome.pairs.find((one) => one.bid === bid && one.than === than);
    expect(pair("a", "b")?.chance.value).toBe(0.375);
    expect(pair("b", "a")?.chance.value).toBe(0.625);
    expect(pair("a", "b")?.saving.value).toBe(-0.5);
    expect(outcome.pairs).toHaveLength(6);
  });
  test("shares the first place among those that tie", () => {
    expect(outcome.bids.map(({ cheapest }) => cheapest.value)).toEqual([0.375, 0.625, 0]);
    expect(outcome.bids[2]?.cheapest.between.high).toBeGreaterThan(0.3);
  });
  test("puts every draw into one of the bins that all bids share", () => {
    expect(outcome.edges[0]).toBe(1);
    expect(outcome.edges.at(-1)).toBeCloseTo(9, 12);
    for (const { counts } of outcome.bids) expect(counts.reduce((sum, count) => sum + count, 0)).toBe(4);
  });
  test("gives one bin of no width where all costs are one", () => {
    const same = costOutcome(draws([5, 5], [5, 5]));
    expect(same.bids[0]?.counts[0]).toBe(2);
    expect(same.bids[0]?.percentiles.every(({ cents }) => cents === 5)).toBe(true);
    expect(same.pairs[0]?.chance.value).toBe(0.5);
  });
});
