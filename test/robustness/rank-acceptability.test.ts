import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type BidValues,
  type Comparison,
  type CriterionValue,
  exactAcceptability,
  middleValue,
  rankAcceptability,
  usualConcentration,
  type WeightChoice,
} from "#lib/robustness";
import { drawnToEnd } from "#lib/sampling";

const known = (value: number): CriterionValue => ({ kind: "known", value });
const bid = (name: string, ...values: readonly (number | CriterionValue)[]): BidValues => ({
  bid: name,
  standing: "in",
  values: values.map((value) => (typeof value === "number" ? known(value) : value)),
});
const on = (shares: readonly number[], ...bids: readonly BidValues[]): Comparison => ({
  criteria: shares.map((_, at) => `c${at}`),
  shares,
  bids,
});
const ranked = (that: Comparison, draws = 2000, weights: WeightChoice = { kind: "any" }, seed = 1) =>
  drawnToEnd(rankAcceptability(that, { weights, seed, draws }));

const value = fc.double({ min: 0, max: 1, noNaN: true });
const bids = (criteria: number) =>
  fc.array(fc.array(value, { minLength: criteria, maxLength: criteria }), { minLength: 1, maxLength: 5 });
/** No two alike: bids that tie everywhere share drawn places, and are each given the whole by the exact rule. */
const tenth = fc.integer({ min: 0, max: 10 }).map((tenths) => tenths / 10);
const unlikeBids = fc.uniqueArray(fc.tuple(tenth, tenth, tenth), { minLength: 1, maxLength: 5, selector: String });

describe("rankAcceptability", () => {
  test("gives each bid shares of places that add up to 1, and each place to one bid in all", () => {
    fc.assert(
      fc.property(bids(3), (all) => {
        const { bids: found } = ranked(on([0.5, 0.3, 0.2], ...all.map((values, at) => bid(`b${at}`, ...values))), 300);
        const sum = (shares: readonly number[]) => shares.reduce((total, share) => total + share, 0);
        for (const { places } of found) expect(sum(places.map((place) => place.value))).toBeCloseTo(1, 9);
        for (const [place] of found.entries())
          expect(sum(found.map(({ places }) => places[place]?.value ?? 0))).toBeCloseTo(1, 9);
      }),
      { numRuns: 40 },
    );
  });

  test("agrees with the exact shares of three criteria within five standard errors", () => {
    fc.assert(
      fc.property(unlikeBids, (all) => {
        const draws = 4000;
        const named = all.map((values, at) => ({ bid: `b${at}`, values }));
        const { bids: found } = ranked(on([0.5, 0.3, 0.2], ...named.map((one) => bid(one.bid, ...one.values))), draws);
        for (const [at, { share }] of exactAcceptability(named).entries()) {
          const error = Math.sqrt((share * (1 - share)) / draws);
          expect(Math.abs((found[at]?.places[0]?.value ?? 0) - share)).toBeLessThanOrEqual(5 * error + 2 / draws);
        }
      }),
      { numRuns: 40, seed: 7 },
    );
  });

  test("shares places, firsts and head-to-heads among bids that tie", () => {
    const { bids: found, pairs } = ranked(on([0.6, 0.4], bid("a", 0.5, 0.5), bid("b", 0.5, 0.5), bid("c", 0, 0)), 100);
    expect(found.map(({ places }) => places.map((place) => place.value))).toEqual([
      [0.5, 0.5, 0],
      [0.5, 0.5, 0],
      [0, 0, 1],
    ]);
    expect(pairs.map(({ bid: one, against, ahead }) => `${one}${against} ${ahead.value}`)).toEqual([
      "ab 0.5",
      "ac 1",
      "ba 0.5",
      "bc 1",
      "ca 0",
      "cb 0",
    ]);
    expect(found[2]?.centralWeights).toBeNull();
  });

  test("leaves bids out that fail a gate, however good their values", () => {
    const found = ranked(on([1], bid("a", 0.2), { ...bid("b", 1), standing: "out" }), 50);
    expect(found.bids.map((one) => one.bid)).toEqual(["a"]);
    expect(found.bids[0]?.places[0]?.value).toBe(1);
    expect(found.out).toEqual(["b"]);
  });

  test("leaves the draws of other bids as they were when one is added, and never reverses two", () => {
    const doubt: CriterionValue = { kind: "between", low: 0.2, high: 0.9 };
    const [a, b, c] = [bid("a", doubt, 0.5), bid("b", 0.6, doubt), bid("c", doubt, doubt)];
    const pair = (that: Comparison) =>
      ranked(that).pairs.find((one) => one.bid === "a" && one.against === "b")?.ahead.value;
    expect(pair(on([0.5, 0.5], a, b, c))).toBe(pair(on([0.5, 0.5], a, b)));
  });

  test("never lifts a bid less often when its claim gets better", () => {
    const doubt: CriterionValue = { kind: "between", low: 0, high: 1 };
    fc.assert(
      fc.property(value, value, (one, more) => {
        const first = (claimed: number) =>
          ranked(on([0.5, 0.5], bid("a", claimed, 0.5), bid("b", doubt, 0.6)), 500).bids[0]?.places[0]?.value ?? 0;
        expect(first(Math.max(one, more))).toBeGreaterThanOrEqual(first(Math.min(one, more)));
      }),
      { numRuns: 30 },
    );
  });

  test("gives a criterion without weight none in any draw", () => {
    for (const weights of [
      { kind: "any" },
      { kind: "owners-order" },
      { kind: "near-owners", concentration: usualConcentration },
    ] as const) {
      const { bids: found } = ranked(on([0.7, 0.3, 0], bid("a", 1, 0.5, 0), bid("b", 0.5, 0.6, 1)), 500, weights);
      for (const { centralWeights } of found) expect(centralWeights?.[2]?.value ?? 0).toBe(0);
    }
  });

  test("gives the owner's own weights where only values are in doubt", () => {
    const found = ranked(
      on([0.7, 0.3], bid("a", 0.9, 0.1), bid("b", { kind: "between", low: 0, high: 1 }, 0.5)),
      2000,
      { kind: "owners" },
    );
    for (const [at, share] of [0.7, 0.3].entries())
      expect(found.bids[0]?.centralWeights?.[at]?.value).toBeCloseTo(share, 12);
    // a has 0.66; b has 0.7 u + 0.15, so a leads for u < 0.51 / 0.7
    expect(Math.abs((found.bids[0]?.places[0]?.value ?? 0) - 0.51 / 0.7)).toBeLessThan(0.04);
  });

  test("draws what a value function makes of a figure", () => {
    const drawn: CriterionValue = {
      ...{ kind: "drawn", low: 0, high: 1 },
      distribution: { kind: "uniform", low: 90, high: 190 },
      curve: [
        { figure: 165, value: 1 },
        { figure: 165, value: 0 },
      ],
    };
    const found = ranked(on([1], bid("a", drawn), bid("b", 0.5)), 4000);
    expect(Math.abs((found.bids[0]?.places[0]?.value ?? 0) - 0.75)).toBeLessThan(4 * Math.sqrt(0.1875 / 4000));
    expect(middleValue(drawn)).toBe(0.5);
  });

  test("gives the same for the same seed, another for another, and can be left at any report", () => {
    const that = on([0.5, 0.5], bid("a", 1, 0), bid("b", 0.4, 0.8));
    expect(ranked(that, 3000)).toEqual(ranked(that, 3000));
    expect(ranked(that, 3000, { kind: "any" }, 2).bids).not.toEqual(ranked(that, 3000).bids);
    const drawing = rankAcceptability(that, { weights: { kind: "any" }, seed: 1, draws: 5000 });
    expect(drawing.next().value).toEqual({ done: 2048, of: 5000 });
    expect(drawing.return(undefined as never).done).toBe(true);
  });

  test("states standard errors that hold the exact share about 95 times in 100", () => {
    const that = on([0.5, 0.5], bid("a", 1, 0), bid("b", 0.4, 0.8));
    const exact = 3 / 7;
    let [byError, byEnds] = [0, 0];
    for (let seed = 0; seed < 600; seed += 1) {
      const share = ranked(that, 400, { kind: "any" }, seed).bids[0]?.places[0];
      if (share === undefined) throw new RangeError("no share");
      if (Math.abs(share.value - exact) <= 1.959964 * share.standardError) byError += 1;
      if (share.between.low <= exact && exact <= share.between.high) byEnds += 1;
    }
    // four standard errors of a share of 0.95 in 600 runs are 21
    expect(Math.abs(byError - 570)).toBeLessThan(21);
    expect(Math.abs(byEnds - 570)).toBeLessThan(21);
  });

  // exact: the centre of the weights above 4/7 is 11/14
  test("states errors of central weights that hold the exact centre about 95 times in 100", () => {
    const that = on([0.5, 0.5], bid("a", 1, 0), bid("b", 0.4, 0.8));
    let held = 0;
    for (let seed = 0; seed < 600; seed += 1) {
      const centre = ranked(that, 400, { kind: "any" }, seed).bids[0]?.centralWeights?.[0];
      if (centre === undefined) throw new Error("a bid that is first somewhere");
      if (Math.abs(centre.value - 11 / 14) <= 1.96 * centre.standardError) held += 1;
    }
    // four standard errors of a share of 0.95 in 600 runs are 21
    expect(Math.abs(held - 570)).toBeLessThanOrEqual(22);
  });

  test("refuses values that don't match the criteria", () => {
    expect(() => ranked(on([0.5, 0.5], bid("a", 1)))).toThrow(RangeError);
    expect(() => ranked(on([0.5, 0.6], bid("a", 1, 1)))).toThrow(RangeError);
  });
});

describe("exactAcceptability", () => {
  test("refuses more than three criteria", () => {
    expect(() => exactAcceptability([{ bid: "a", values: [1, 1, 1, 1] }])).toThrow(RangeError);
  });
  test("keeps to falling weights on two criteria", () => {
    const found = exactAcceptability(
      [
        { bid: "a", values: [1, 0] },
        { bid: "b", values: [0.4, 0.8] },
      ],
      "falling",
    );
    // a leads for w1 > 4/7 of the part from ½ to 1
    expect(found[0]?.share).toBeCloseTo((1 - 4 / 7) / 0.5, 12);
  });
});
