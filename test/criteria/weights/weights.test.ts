import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  combinedWeights,
  consistentUpTo,
  directWeights,
  explainConsistency,
  greatestSwing,
  groupedWeights,
  type PairJudgement,
  pairwiseWeights,
  rankWeights,
  swingWeights,
  weightMethodSchema,
} from "#lib/criteria";

const nameOf = (criterion: string) => criterion;
const sum = (shares: readonly { share: number }[]) => shares.reduce((total, { share }) => total + share, 0);

describe("directWeights", () => {
  test("count proportions only", () => {
    const points = fc.array(fc.double({ min: 0.01, max: 1000, noNaN: true }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(points, fc.double({ min: 0.01, max: 100, noNaN: true }), (given, factor) => {
        const rows = given.map((one, at) => ({ criterion: `c${at}`, points: one }));
        const shares = directWeights(rows);
        expect(sum(shares)).toBeCloseTo(1, 12);
        const scaled = directWeights(rows.map((row) => ({ ...row, points: row.points * factor })));
        for (const [at, { share }] of scaled.entries()) expect(share).toBeCloseTo(shares[at]?.share ?? 0, 12);
      }),
    );
  });
  test("are all 0 where nothing weighs", () => {
    expect(directWeights([{ criterion: "a", points: 0 }])).toEqual([{ criterion: "a", share: 0 }]);
  });
});

describe("swingWeights", () => {
  test("ask for the greatest swing", () => {
    expect(greatestSwing).toBe(100);
    expect(swingWeights([{ criterion: "a", points: 80 }])).toEqual({
      kind: "no-greatest",
      message:
        "The highest swing has 80 points; expected 100 for the move from worst to best that matters most, and the others beside it.",
    });
    expect(swingWeights([])).toMatchObject({ kind: "no-greatest" });
  });
});

describe("rankWeights", () => {
  test("keep the order and add up to 1, by every rule", () => {
    const ranks = fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(ranks, fc.constantFrom("centroid", "sum", "reciprocal"), (given, rule) => {
        const rows = given.map((rank, at) => ({ criterion: `c${at}`, rank }));
        const shares = rankWeights(rows, rule);
        expect(sum(shares)).toBeCloseTo(1, 12);
        for (const [one, row] of rows.entries())
          for (const [other, second] of rows.entries()) {
            const [here, there] = [shares[one]?.share ?? 0, shares[other]?.share ?? 0];
            if (row.rank < second.rank) expect(here).toBeGreaterThan(there);
            if (row.rank === second.rank) expect(here).toBeCloseTo(there, 12);
          }
      }),
    );
  });
  test("don't mind how ranks after a tie are called", () => {
    const called = (...ranks: number[]) => rankWeights(ranks.map((rank, at) => ({ criterion: `c${at}`, rank })));
    expect(called(1, 2, 2, 4)).toEqual(called(1, 2, 2, 3));
  });
});

describe("pairwiseWeights", () => {
  const criteria = ["impact", "heat", "cost"];
  const judged = (...times: readonly [number, number, number]): readonly PairJudgement[] => [
    { first: "impact", second: "heat", times: times[0] },
    { first: "heat", second: "cost", times: times[1] },
    { first: "impact", second: "cost", times: times[2] },
  ];

  test("find weights again from judgements that they would give", () => {
    const weights = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 2, maxLength: 9 });
    fc.assert(
      fc.property(weights, (given) => {
        const names = given.map((_, at) => `c${at}`);
        const judgements = names.flatMap((first, one) =>
          names
            .slice(one + 1)
            .map((second, at) => ({ first, second, times: (given[one] ?? 1) / (given[one + 1 + at] ?? 1) })),
        );
        const weighed = pairwiseWeights(names, judgements);
        const total = given.reduce((all, weight) => all + weight, 0);
        if (weighed.kind !== "weighed") throw new RangeError("a judgement is missing");
        for (const [at, { share }] of weighed.shares.entries()) expect(share).toBeCloseTo((given[at] ?? 0) / total, 10);
        expect(weighed.greatest).toBeCloseTo(names.length, 9);
        expect(weighed.least).toBeNull();
      }),
    );
  });

  test("don't mind which of a pair is named first", () => {
    const turned = judged(3, 3, 5).map(({ first, second, times }) => ({
      first: second,
      second: first,
      times: 1 / times,
    }));
    const [one, other] = [pairwiseWeights(criteria, judged(3, 3, 5)), pairwiseWeights(criteria, turned)];
    expect(one.kind === "weighed" && other.kind === "weighed" && other.greatest).toBeCloseTo(
      one.kind === "weighed" ? one.greatest : Number.NaN,
      12,
    );
  });

  test("name the judgement that fits least, and what the others say", () => {
    expect(explainConsistency(pairwiseWeights(criteria, judged(3, 3, 1)), nameOf)).toBe(
      "The judgements contradict each other (ratio 0.48, at most 0.1 is wanted). Of three judgements each is equally far from the other two, this one for instance: You said that “impact” is 3 times as important as “heat”; your other judgements together say that “heat” is 3 times as important as “impact”.",
    );
    // one slip among four: the slip itself is named
    const four = ["a", "b", "c", "d"];
    const weights = [8, 4, 2, 1];
    const judgements = four.flatMap((first, one) =>
      four
        .slice(one + 1)
        .map((second, at) => ({ first, second, times: (weights[one] ?? 1) / (weights[one + 1 + at] ?? 1) })),
    );
    const slipped = judgements.map((one) => (one.first === "a" && one.second === "d" ? { ...one, times: 1 / 8 } : one));
    const weighed = pairwiseWeights(four, slipped);
    expect(weighed.kind === "weighed" && weighed.least?.judgement).toMatchObject({ first: "a", second: "d" });
    expect(weighed.kind === "weighed" && weighed.least?.othersSay).toBeCloseTo(8, 12);
    expect(weighed.kind === "weighed" && (weighed.consistencyRatio ?? 0) > consistentUpTo).toBe(true);
    expect(explainConsistency(weighed, (id) => id)).toMatch(
      /Look at this one first: You said that “d” is 8 times as important as “a”; your other judgements together say that “a” is 8 times as important as “d”\.$/,
    );
  });

  test("say where judgements fit well enough, exactly, or can't be told", () => {
    const says = (names: readonly string[], judgements: readonly PairJudgement[]) =>
      explainConsistency(pairwiseWeights(names, judgements), nameOf);
    expect(says(criteria, judged(3, 3, 5))).toBe(
      "The judgements fit together well enough (ratio 0.033, at most 0.1 is wanted). Of three judgements each is equally far from the other two, this one for instance: You said that “impact” is 3 times as important as “heat”; your other judgements together say that “impact” is 1.7 times as important as “heat”.",
    );
    expect(says(criteria, judged(2, 2, 4))).toBe("The judgements fit together exactly.");
    expect(says(["impact", "heat"], judged(3, 3, 5))).toBe(
      "With fewer than three criteria judgements can’t contradict each other.",
    );
    expect(says(criteria, judged(3, 3, 5).slice(0, 1))).toBe(
      "Not every pair is judged yet: “impact” against “cost” and 1 more.",
    );
    const many = Array.from({ length: 11 }, (_, at) => `c${at}`);
    const alike = many.flatMap((first, at) => many.slice(at + 1).map((second) => ({ first, second, times: 1 })));
    expect(says(many, alike)).toBe(
      "For more than ten criteria no table says how much contradiction is too much. Judge them in groups.",
    );
  });
});

describe("groupedWeights", () => {
  test("hand the share of a group on to what it holds", () => {
    const shares = groupedWeights([
      {
        ...{ kind: "group", label: "Safety", weight: 60 },
        of: [
          { kind: "criterion", criterion: "impact", weight: 3 },
          { kind: "criterion", criterion: "heat", weight: 1 },
        ],
      },
      { kind: "criterion", criterion: "cost", weight: 40 },
    ]);
    expect(shares.map(({ criterion, share }) => [criterion, Math.round(share * 1000) / 1000])).toEqual([
      ["impact", 0.45],
      ["heat", 0.15],
      ["cost", 0.4],
    ]);
  });
  test("leave an empty group out, so that no share is lost", () => {
    const shares = groupedWeights([
      { kind: "group", label: "Empty", weight: 60, of: [{ kind: "group", label: "Inner", weight: 5, of: [] }] },
      { kind: "criterion", criterion: "cost", weight: 40 },
    ]);
    expect(shares).toEqual([{ criterion: "cost", share: 1 }]);
  });
});

describe("combinedWeights", () => {
  const people = [
    {
      person: "first",
      shares: directWeights([
        { criterion: "a", points: 3 },
        { criterion: "b", points: 1 },
      ]),
    },
    {
      person: "second",
      shares: directWeights([
        { criterion: "a", points: 100 },
        { criterion: "b", points: 300 },
      ]),
    },
  ];
  test("count every person alike and keep each apart", () => {
    const combined = combinedWeights(["a", "b"], people);
    expect(combined.shares).toEqual([
      { criterion: "a", share: 0.5 },
      { criterion: "b", share: 0.5 },
    ]);
    expect(combined.criteria[0]).toMatchObject({
      ...{ low: { person: "second", share: 0.25 }, high: { person: "first", share: 0.75 } },
      each: [
        { person: "first", share: 0.75 },
        { person: "second", share: 0.25 },
      ],
    });
  });
  test("give nothing where nobody has weighed", () => {
    expect(combinedWeights(["a"], []).shares).toEqual([{ criterion: "a", share: 0 }]);
  });
});

describe("weightMethodSchema", () => {
  const message = (given: unknown) => weightMethodSchema.safeParse(given).error?.issues[0]?.message;
  test("read each way of giving weights", () => {
    expect(weightMethodSchema.parse({ kind: "swing", points: [{ criterion: "a", points: "100" }] })).toEqual({
      kind: "swing",
      points: [{ criterion: "a", points: 100 }],
    });
    expect(weightMethodSchema.parse({ kind: "rank-order", ranks: [{ criterion: "a", rank: "1" }] })).toMatchObject({
      rule: "centroid",
    });
    expect(
      weightMethodSchema.parse({ kind: "pairwise", judgements: [{ first: "a", second: "b", times: "1/3" }] }),
    ).toEqual({ kind: "pairwise", judgements: [{ first: "a", second: "b", times: 1 / 3 }] });
  });
  test("say what was read and what was expected", () => {
    expect(message({ kind: "swing", points: [{ criterion: "a", points: "-3" }] })).toBe(
      "The points read “-3”; expected a number of 0 or more, such as 30.",
    );
    expect(message({ kind: "rank-order", ranks: [{ criterion: "a", rank: "0" }] })).toBe(
      "The place reads “0”; expected a whole number from 1, 1 for the most important.",
    );
    expect(message({ kind: "pairwise", judgements: [{ first: "a", second: "b", times: "12" }] })).toBe(
      "The judgement reads “12”; expected 1 to 9, or 1/2 to 1/9 where the second is more important.",
    );
    expect(message({ kind: "pairwise", judgements: [{ first: "a", second: "a", times: "2" }] })).toBe(
      "A criterion is compared with itself; expected two different ones.",
    );
    expect(
      message({
        kind: "swing",
        points: [
          { criterion: "a", points: "3" },
          { criterion: "a", points: "3" },
        ],
      }),
    ).toBe("“a” stands there twice; expected each criterion once.");
    expect(message({ kind: "guess" })).toBe(
      "Choose how weights are given: direct, swing, rank-order, pairwise or several-people.",
    );
  });
});
