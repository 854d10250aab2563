import { describe, expect, test } from "vitest";
import {
  type BidFigures,
  type Criterion,
  type CriterionText,
  dominates,
  ranking,
  scoreBid,
  valueAt,
  valueBounds,
  weightStability,
} from "#lib/criteria";
import { known } from "#lib/figure";
import { measured } from "#lib/quantity";
import { bidOf, criteriaOf, criterionText, stated, workedBids, workedTexts, working } from "../criteria/worked-score";

const worked = criteriaOf(workedTexts);

const scoreRule = ({ valueFunction }: Criterion) => {
  if (valueFunction.kind === "none") throw new Error("the criterion scores nothing");
  return valueFunction;
};
const workedRule = (id: string) => worked.filter((criterion) => criterion.id === id).map(scoreRule);
const single = (text: Partial<CriterionText>) => criteriaOf([criterionText(text)]).map(scoreRule);

// derived by hand from the trapezoid's definition: 0 outside, 1 on the window, straight shoulders
test.each([
  [80, 0],
  [85, 0.5],
  [90, 1],
  [104, 1],
  [115, 1],
  [128, 0.74],
  [165, 0],
  [170, 0],
])("a window of 80/90/115/165 g values %d g at %d", (figure, value) => {
  for (const rule of workedRule("impact")) expect(valueAt(rule, figure)).toBeCloseTo(value, 9);
});

// derived by hand from (worst − figure) ÷ (worst − best), held between 0 and 1
test.each([
  [45, 0],
  [32, 0.266667],
  [30, 0.333333],
  [18, 0.733333],
  [5, 1],
])("less is better from 40 K to 10 K values %d K at %d", (figure, value) => {
  for (const rule of workedRule("heat")) expect(valueAt(rule, figure)).toBeCloseTo(value, 6);
});

// derived by hand: (1200 − 900) ÷ (1200 − 700)
test("a price of $900 between $1,200 and $700 is worth 0.6 whatever other bids cost", () => {
  const rules = single({
    measure: "cost",
    valueFunction: { kind: "less-is-better", worst: "$1200/ft²", best: "$700/ft²" },
  });
  for (const rule of rules) expect(valueAt(rule, measured("moneyPerArea", 900, "$/ft²"))).toBeCloseTo(0.6, 9);
});

// derived by hand: straight lines between the knots (6, 0), (8, 0.5), (10, 0.8), (12, 1), level beyond them
test.each([
  [5, 0],
  [7, 0.25],
  [8, 0.5],
  [9, 0.65],
  [11, 0.9],
  [15, 1],
])("a warranty of %d years is worth %d between its knots", (years, value) => {
  for (const rule of workedRule("warranty")) {
    expect(valueAt(rule, measured("time", years, "year"))).toBeCloseTo(value, 9);
  }
});

// derived by hand: 128 g to 85 g crosses the window, so the value runs from 0.5 (at 85 g) to 1
test("a range across the window is worth anything from its lower end to 1", () => {
  for (const rule of workedRule("impact"))
    expect(valueBounds(rule, { low: 85, high: 128 })).toEqual({ low: 0.5, high: 1 });
});

describe("an invented comparison of three bids", () => {
  const scores = workedBids.map((bid) => scoreBid(worked, bid));

  // worked by hand from the additive value model on swing weights (von Winterfeldt & Edwards 1986, from memory):
  // values of the five figures to four decimals
  test.each([
    ["a", 0, [0.74, 0.3333, 0.2667, 0.7799, 0.5]],
    ["b", 1, [1, 0.8333, 0.3333, 0.6958, 0.8]],
    ["c", 2, [1, 0.6667, 0.7333, 0.5182, 0.5]],
  ])("values the figures of bid %s", (_, index, expected) => {
    const values = scores[index]?.criteria.map(({ value }) => value?.likely ?? Number.NaN) ?? [];
    expect(values).toHaveLength(5);
    for (const [position, value] of expected.entries()) expect(values[position]).toBeCloseTo(value, 4);
  });

  // the same hand-worked comparison: points 100, 80, 60, 90, 40 over 370
  test("adds them up to 0.559075, 0.76024 and 0.713436", () => {
    const totals = scores.map(({ total }) => total);
    for (const [index, expected] of [0.559075, 0.76024, 0.713436].entries()) {
      for (const side of ["low", "likely", "high"] as const) expect(totals[index]?.[side]).toBeCloseTo(expected, 6);
    }
  });

  test("puts b before c before a, each for certain", () => {
    expect(ranking(scores)).toEqual({
      places: [
        { place: 1, bid: "b" },
        { place: 2, bid: "c" },
        { place: 3, bid: "a" },
      ],
      leads: [
        { ahead: "b", behind: "c", how: "ahead for certain" },
        { ahead: "c", behind: "a", how: "ahead for certain" },
      ],
      failing: [],
    });
  });

  // derived: linear crossings of the leader's total with each rival's while the other weights keep their proportions
  test("keeps b first below a temperature weight of 0.249927 and a cost weight of 0.776898", () => {
    const stability = weightStability(scores);
    if (stability.kind !== "led") throw new Error("one bid leads");
    expect(stability.leader).toBe("b");
    const expected = [
      ["impact", 0, 1],
      ["fall", 0, 1],
      ["heat", 0, 0.249927],
      ["cost", 0, 0.776898],
      ["warranty", 0, 1],
    ] as const;
    expect(stability.rooms.map(({ criterion }) => criterion.id)).toEqual(expected.map(([id]) => id));
    for (const [index, [, low, high]] of expected.entries()) {
      expect(stability.rooms[index]?.low).toBe(low);
      expect(stability.rooms[index]?.high).toBeCloseTo(high, 6);
    }
  });

  test("gives each bid the same score when a hopeless fourth bid is added", () => {
    const four = [...workedBids, bidOf("d", [199, 0.5, 60, 3, 1])].map((bid) => scoreBid(worked, bid));
    expect(four.slice(0, 3)).toEqual(scores);
  });
});

/** Criteria that read a figure of `from` to `to` lb/ft² as 0 to 1, with these weights. */
const scales = (parts: readonly Readonly<{ weight: string; from: number; to: number }>[]) =>
  criteriaOf(
    parts.map(({ weight, from, to }, index) =>
      criterionText({
        id: `scale-${index}`,
        weight,
        valueFunction: { kind: "more-is-better", worst: `${from} lb/ft²`, best: `${to} lb/ft²` },
      }),
    ),
  );

const onScales = (bid: string, figures: readonly number[]): BidFigures => ({
  bid,
  shown: Object.fromEntries(
    figures.map((figure, index) => [
      `scale-${index}`,
      { figure: known("arealDensity", measured("arealDensity", figure, "lb/ft²"), working), evidence: stated },
    ]),
  ),
});

// derived: 0.9 w + (1 − w)(0.3 × 0.2 + 0.2 × 0.5) ÷ 0.5 = 0.4 w + (1 − w)(0.3 × 0.9 + 0.2 × 0.6) ÷ 0.5 at w = 23/48
test("a lead that rests on one weight of 0.5 is lost below 23/48", () => {
  const criteria = scales(["50", "30", "20"].map((weight) => ({ weight, from: 0, to: 1 })));
  const scores = [onScales("a", [0.9, 0.2, 0.5]), onScales("b", [0.4, 0.9, 0.6])].map((bid) => scoreBid(criteria, bid));
  expect(scores.map(({ total }) => total?.likely)).toEqual([expect.closeTo(0.61, 9), expect.closeTo(0.59, 9)]);
  const stability = weightStability(scores);
  if (stability.kind !== "led") throw new Error("one bid leads");
  expect(stability.leader).toBe("a");
  expect(stability.rooms[0]?.low).toBeCloseTo(23 / 48, 9);
  expect(stability.rooms[0]?.high).toBe(1);
});

describe("a claim that is missing", () => {
  const criteria = scales([
    { weight: "65", from: 0, to: 65 },
    { weight: "35", from: 0, to: 1 },
  ]);
  const silent = scoreBid(criteria, onScales("a", [51]));

  // derived: 0.65 × 51/65 = 0.51 is sure, 0.35 is open; dividing 0.51 by the weight shown would give 0.784615 and reward silence
  test("leaves 0.51 to 0.86 on 65 % of the weight and is never divided away", () => {
    expect(silent.total?.low).toBeCloseTo(0.51, 9);
    expect(silent.total?.high).toBeCloseTo(0.86, 9);
    expect(silent.total?.likely).toBeNull();
    expect(silent.coverage).toBeCloseTo(0.65, 12);
  });

  // derived: 0.7 lies between 0.51 and 0.86, so neither is sure to be ahead
  test("leaves the order against a complete bid at 0.7 undecided", () => {
    const complete = scoreBid(criteria, onScales("b", [45.5, 0.7]));
    expect(complete.total?.likely).toBeCloseTo(0.7, 9);
    expect(ranking([silent, complete]).leads).toEqual([{ ahead: "b", behind: "a", how: "ahead on the figures shown" }]);
  });
});

// constructed demonstration: stretched over the bids present, a and b score 0.55 and 0.45 alone, 0.55 and 0.6675 beside c
test("a third bid can't reverse two others, as it does where scores are stretched over the bids present", () => {
  const criteria = scales([
    { weight: "55", from: 0, to: 10 },
    { weight: "45", from: 4, to: 8 },
  ]);
  const [a, b, c] = [onScales("a", [10, 4]), onScales("b", [6, 7]), onScales("c", [0, 8])].map((bid) =>
    scoreBid(criteria, bid),
  );
  if (a === undefined || b === undefined || c === undefined) throw new Error("three bids were scored");
  expect([a, b, c].map(({ total }) => total?.likely)).toEqual(
    [0.55, 0.6675, 0.45].map((total) => expect.closeTo(total, 9)),
  );
  const placeless = (bids: readonly { bid: string }[]) => bids.map(({ bid }) => bid);
  expect(placeless(ranking([a, b]).places)).toEqual(["b", "a"]);
  expect(placeless(ranking([a, b, c]).places)).toEqual(["b", "a", "c"]);
});

// Pareto dominance by its definition
test("a bid dominates only where it is at least as good everywhere and better somewhere", () => {
  const criteria = scales(["1", "1", "1"].map((weight) => ({ weight, from: 0, to: 1 })));
  const [a, b, c] = [
    onScales("a", [0.8, 0.6, 0.7]),
    onScales("b", [0.8, 0.5, 0.7]),
    onScales("c", [0.9, 0.4, 0.6]),
  ].map((bid) => scoreBid(criteria, bid));
  if (a === undefined || b === undefined || c === undefined) throw new Error("three bids were scored");
  expect([dominates(a, b), dominates(b, a), dominates(a, c), dominates(c, a), dominates(a, a)]).toEqual([
    true,
    false,
    false,
    false,
    false,
  ]);
});
