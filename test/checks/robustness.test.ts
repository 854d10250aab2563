// Exact cases of the cost-and-decision reference, sections 3.5, 3.6 and 3.8: worked out there by exact integration over
// even weights, by the definitions of SMAA-2 (Lahdelma and Salminen 2001), independently of this code.
import { describe, expect, test } from "vitest";
import {
  type Comparison,
  type CriterionValue,
  dominances,
  exactAcceptability,
  leadersRoom,
  rankAcceptability,
  type WeightChoice,
} from "#lib/robustness";
import { drawnToEnd } from "#lib/sampling";

const draws = 40_000;
const even = (count: number) => new Array<number>(count).fill(1 / count);
const known = (values: readonly number[]): readonly CriterionValue[] =>
  values.map((value) => ({ kind: "known", value }));
const comparison = (bids: Readonly<Record<string, readonly number[]>>, shares?: readonly number[]): Comparison => {
  const criteria = Object.values(bids)[0]?.length ?? 0;
  return {
    criteria: even(criteria).map((_, at) => `c${at + 1}`),
    shares: shares ?? even(criteria),
    bids: Object.entries(bids).map(([bid, values]) => ({ bid, standing: "in", values: known(values) })),
  };
};
const ranked = (that: Comparison, weights: WeightChoice = { kind: "any" }) =>
  drawnToEnd(rankAcceptability(that, { weights, seed: 2027, draws }));
const placesOf = (result: ReturnType<typeof ranked>) =>
  result.bids.map(({ places }) => places.map(({ value }) => value));
/** Within four standard errors of the exact share. */
const near = (found: number | undefined, exact: number) =>
  expect(Math.abs((found ?? Number.NaN) - exact)).toBeLessThanOrEqual(
    4 * Math.sqrt((exact * (1 - exact)) / draws) + 1e-9,
  );
const asKnown = (bids: Readonly<Record<string, readonly number[]>>) =>
  Object.entries(bids).map(([bid, values]) => ({ bid, values }));

describe("two criteria", () => {
  const two = { A: [1, 0], B: [0.4, 0.8] };
  test("A = (1, 0) leads for w1 > 4/7, exactly and drawn, with the stated central weights", () => {
    const exact = exactAcceptability(asKnown(two));
    expect(exact[0]?.share).toBeCloseTo(3 / 7, 12);
    expect(exact[1]?.share).toBeCloseTo(4 / 7, 12);
    expect(exact[0]?.centralWeights?.[0]).toBeCloseTo(11 / 14, 12);
    expect(exact[1]?.centralWeights?.[0]).toBeCloseTo(2 / 7, 12);
    const drawn = ranked(comparison(two));
    near(drawn.bids[0]?.places[0]?.value, 3 / 7);
    expect(drawn.bids[0]?.centralWeights?.[0]?.value).toBeCloseTo(11 / 14, 2);
    expect(drawn.bids[1]?.centralWeights?.[1]?.value).toBeCloseTo(5 / 7, 2);
  });

  test("three bids take their ranks as stated [SMAA-3x2]", () => {
    const three = { A: [1, 0], B: [0, 1], C: [0.6, 0.6] };
    const expected = [
      [0.4, 0.1, 0.5],
      [0.4, 0.1, 0.5],
      [0.2, 0.8, 0],
    ];
    const found = placesOf(ranked(comparison(three)));
    for (const [bid, places] of expected.entries())
      for (const [place, share] of places.entries()) near(found[bid]?.[place], share);
    for (const [at, { share }] of exactAcceptability(asKnown(three)).entries())
      expect(share).toBeCloseTo(expected[at]?.[0] ?? 0, 12);
  });
});

describe("three criteria", () => {
  test("unit vectors lead in a third each, A's centre at 11/18 [SMAA-3x3-corner]", () => {
    const corners = { A: [1, 0, 0], B: [0, 1, 0], C: [0, 0, 1] };
    for (const { share } of exactAcceptability(asKnown(corners))) expect(share).toBeCloseTo(1 / 3, 12);
    const centre = exactAcceptability(asKnown(corners))[0]?.centralWeights ?? [];
    for (const [at, weight] of [0.611111, 0.194444, 0.194444].entries()) expect(centre[at]).toBeCloseTo(weight, 6);
    const drawn = ranked(comparison(corners));
    for (const { places } of drawn.bids) near(places[0]?.value, 1 / 3);
    expect(drawn.bids[0]?.centralWeights?.[0]?.value).toBeCloseTo(11 / 18, 2);
  });

  test("A = (1, 0, 0) beats D = (½, ½, ½) in a quarter, and in three quarters in the owner's order [SMAA-3c-pair, SMAA-ordinal]", () => {
    const pair = { A: [1, 0, 0], D: [0.5, 0.5, 0.5] };
    expect(exactAcceptability(asKnown(pair))[0]?.share).toBeCloseTo(0.25, 12);
    expect(exactAcceptability(asKnown(pair), "falling")[0]?.share).toBeCloseTo(0.75, 12);
    near(ranked(comparison(pair)).bids[0]?.places[0]?.value, 0.25);
    near(ranked(comparison(pair, [0.5, 0.3, 0.2]), { kind: "owners-order" }).bids[0]?.places[0]?.value, 0.75);
  });
});

describe("values in doubt", () => {
  test("A ~ N(0.6, 0.1) leads B ~ N(0.5, 0.1) with 0.76025 [SMAA-stoch]", () => {
    const drawnValue = (mean: number): CriterionValue => ({
      ...{ kind: "drawn", low: 0, high: 1 },
      curve: [
        { figure: -1, value: -1 },
        { figure: 2, value: 2 },
      ],
      distribution: { kind: "normal", mean, deviation: 0.1 },
    });
    const result = ranked({
      ...{ criteria: ["c"], shares: [1] },
      bids: [
        { bid: "A", standing: "in", values: [drawnValue(0.6)] },
        { bid: "B", standing: "in", values: [drawnValue(0.5)] },
      ],
    });
    near(result.pairs.find(({ bid }) => bid === "A")?.ahead.value, 0.76025);
  });

  // closed form: two even values of which one reaches from 0 to 1, the other from ½ to 1: the second leads in ¾
  test("a claim between 0.5 and 1 leads one between 0 and 1 in three quarters", () => {
    const result = ranked({
      ...{ criteria: ["c"], shares: [1] },
      bids: [
        { bid: "A", standing: "in", values: [{ kind: "between", low: 0.5, high: 1 }] },
        { bid: "B", standing: "in", values: [{ kind: "between", low: 0, high: 1 }] },
      ],
    });
    near(result.bids[0]?.places[0]?.value, 0.75);
  });
});

describe("the worked bids of section 3.8", () => {
  const values = {
    A: [(165 - 128) / 50, 1 / 3, 8 / 30, 0.7799, 0.5],
    B: [1, 5 / 6, 1 / 3, 0.6958, 0.8],
    C: [1, 2 / 3, 22 / 30, 0.5182, 0.5],
  };
  const shares = [100, 80, 60, 90, 40].map((points) => points / 370);

  test("take their ranks over all weights within the ± 0.005 of the reference", () => {
    const expected = [
      [0.004, 0.075, 0.921],
      [0.716, 0.283, 0],
      [0.28, 0.641, 0.079],
    ];
    const found = placesOf(ranked(comparison(values, shares)));
    // ± 0.005 there, and four standard errors here
    for (const [bid, places] of expected.entries())
      for (const [place, share] of places.entries())
        expect(Math.abs((found[bid]?.[place] ?? 1) - share)).toBeLessThan(0.014);
  });

  test("B stays first up to a heat weight of 0.249927 and a cost weight of 0.776898 [WSI-example]", () => {
    const room = leadersRoom(asKnown(values), shares);
    expect(room.kind === "led" && room.leader).toBe("B");
    const ends = room.kind === "led" ? room.rooms.map(({ low, high }) => [low, high]) : [];
    // the two costs were rounded to four places there, which moves the crossings by some 1e-4
    for (const [at, [low, high]] of [
      [0, 1],
      [0, 1],
      [0, 0.249927],
      [0, 0.776898],
      [0, 1],
    ].entries()) {
      expect(ends[at]?.[0]).toBeCloseTo(low ?? 0, 3);
      expect(ends[at]?.[1]).toBeCloseTo(high ?? 0, 3);
    }
  });

  test("the crossing of section 3.6 lies at w1 = 23/48 [WSI-1]", () => {
    const room = leadersRoom(
      [
        { bid: "A", values: [0.9, 0.2, 0.5] },
        { bid: "B", values: [0.4, 0.9, 0.6] },
      ],
      [0.5, 0.3, 0.2],
    );
    expect(room.kind === "led" && room.leader).toBe("A");
    expect(room.kind === "led" && room.rooms[0]?.low).toBeCloseTo(23 / 48, 12);
  });
});

describe("dominance [dominance, dominance-ordinal-weights]", () => {
  test("holds for any weights where no criterion is worse, and in the owner's order by the cumulative rule", () => {
    const bids = { A: [0.8, 0.6, 0.7], B: [0.8, 0.5, 0.7], C: [0.9, 0.4, 0.6] };
    expect(dominances(comparison(bids, [0.5, 0.3, 0.2]))).toContainEqual({
      bid: "A",
      over: "B",
      weights: "any-weights",
    });
    expect(dominances(comparison(bids, [0.5, 0.3, 0.2])).some(({ over }) => over === "C")).toBe(false);
    const ordered = { A: [0.8, 0.6, 0.7], C: [0.7, 0.65, 0.7] };
    expect(dominances(comparison(ordered, [0.5, 0.3, 0.2]))).toEqual([
      { bid: "A", over: "C", weights: "owners-order" },
    ]);
  });
});
