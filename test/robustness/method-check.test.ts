import { describe, expect, test } from "vitest";
import { explainMethods, methodCheck } from "#lib/robustness";

const bids = [
  { bid: "a", standing: "in", cents: 115_458_333, points: 0.5 },
  { bid: "b", standing: "in", cents: 125_467_692, points: 0.8 },
  { bid: "c", standing: "out", cents: 90_000_000, points: 0.9 },
] as const;
const scores = new Map([
  ["a", 0.56],
  ["b", 0.76],
]);
const anchors = { bestCents: 90_000_000, worstCents: 180_000_000, share: 0.6 };
const nameOf = (bid: string) => `Bid ${bid.toUpperCase()}`;

describe("methodCheck", () => {
  test("lets bids that fail a gate lead by no method", () => {
    const { outcomes } = methodCheck(bids, scores, anchors);
    expect(outcomes.map(({ method, leaders }) => [method, ...leaders])).toEqual([
      ["owners-score", "b"],
      ["lowest-cost", "a"],
      ["cost-per-point", "b"],
      ["points-alone", "b"],
      ["weighted-with-price", "b"],
    ]);
  });

  test("works out each figure", () => {
    const { outcomes } = methodCheck(bids, scores, anchors);
    const figure = (method: string, bid: string) =>
      outcomes.find((one) => one.method === method)?.figures.find((one) => one.bid === bid)?.figure;
    expect(figure("cost-per-point", "a")).toBeCloseTo(115_458_333 / 50, 6);
    expect(figure("weighted-with-price", "b")).toBeCloseTo(0.6 * ((180 - 125.467692) / 90) + 0.4 * 0.8, 8);
  });

  // cost-and-decision reference, price-absolute: 900 between 700 and 1,200 gives 0.6
  test("turns cost into points on the owner's anchors [price-absolute]", () => {
    const { outcomes } = methodCheck([{ bid: "a", standing: "in", cents: 900, points: 0 }], new Map(), {
      ...{ bestCents: 700, worstCents: 1200, share: 1 },
    });
    expect(outcomes.at(-1)?.figures[0]?.figure).toBeCloseTo(0.6, 12);
    expect(outcomes.find(({ method }) => method === "cost-per-point")?.leaders).toEqual([]);
  });

  test("leaves a bid without a cost to the methods that need none", () => {
    const { outcomes } = methodCheck([{ ...bids[1], cents: null }, bids[0]], scores, anchors);
    expect(outcomes.map(({ method, leaders }) => [method, ...leaders])).toEqual([
      ["owners-score", "b"],
      ["lowest-cost", "a"],
      ["cost-per-point", "a"],
      ["points-alone", "b"],
      ["weighted-with-price", "a"],
    ]);
  });

  test("says whether the answer hangs on the method", () => {
    expect(explainMethods(methodCheck(bids, scores, null), nameOf)).toBe(
      "The answer hangs on the method: Bid B by the owner’s weighted score, Bid A by the lowest cost among bids that pass, Bid B by the lowest cost per point, Bid B by the most points, whatever the cost.",
    );
    expect(explainMethods(methodCheck(bids.slice(0, 1), scores, null), nameOf)).toBe(
      "Bid A comes first by every method looked at: the owner’s weighted score, the lowest cost among bids that pass, the lowest cost per point, the most points, whatever the cost.",
    );
    expect(explainMethods(methodCheck([], scores, null), nameOf)).toBe(
      "No bid passes all gates, so no method has a leader.",
    );
  });
});
