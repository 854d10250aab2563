import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  comparisonOf,
  evaluate,
  heldAgainst,
  levelledCost,
  methodsOf,
  type ProjectFile,
  placedBids,
  projectFileSchema,
  type SingleChange,
  singleChanges,
  valueForMoney,
} from "#lib/evaluation";
import { dominances, rankAcceptability, totalIntervals } from "#lib/robustness";
import { drawnToEnd } from "#lib/sampling";
import { comparison } from "../comparison";
import { workedProject } from "../worked-project";

const read = (file: ProjectFile) => {
  const project = projectFileSchema.parse(file);
  return { project, evaluation: evaluate(project) };
};
const worked = read(workedProject);

type BidText = ProjectFile["bids"][number];
/** The worked project with one bid changed. */
const withBid = (id: string, change: (bid: BidText) => BidText, file = workedProject): ProjectFile => ({
  ...file,
  bids: file.bids.map((bid) => (bid.id === id ? change(bid) : bid)),
});
const withFigure = (id: string, property: string, figure: string): ProjectFile =>
  withBid(id, (bid) => ({
    ...bid,
    claims: bid.claims.map((claim) => (claim.property === property ? { ...claim, figure } : claim)),
  }));
const leaderOf = (file: ProjectFile) => read(file).evaluation.ranking.places[0]?.bid;
const changesOf = (bid: string, file = workedProject): readonly SingleChange[] => {
  const { project, evaluation } = read(file);
  const rivals = evaluation.bids.map(({ id }) => id).filter((id) => id !== bid);
  return singleChanges(project, evaluation, bid, rivals);
};
const needOn = (changes: readonly SingleChange[], kind: SingleChange["changed"]["kind"], criterion?: string) =>
  changes.find(
    ({ changed, need }) =>
      changed.kind === kind &&
      need.kind === "takes" &&
      (criterion === undefined || (changed.kind !== "price" && changed.criterion.id === criterion)),
  )?.need;
const takes = (need: SingleChange["need"] | undefined): number => {
  if (need?.kind !== "takes") throw new RangeError("expected a change that is enough");
  return need.at;
};

describe("comparisonOf", () => {
  // cost-and-decision reference, 3.8: totals of the worked score, which takes yearly cost rounded to $0.0001
  test("hands on values, shares and gates so that totals stay what they were", () => {
    const that = comparisonOf(worked.evaluation);
    if (that === null) throw new RangeError("nothing to compare");
    for (const [at, share] of [100, 80, 60, 90, 40].entries()) expect(that.shares[at]).toBeCloseTo(share / 370, 12);
    const { totals, certainLeader } = totalIntervals(that);
    for (const [at, total] of [0.559075, 0.76024, 0.713436].entries()) {
      expect(totals[at]?.low).toBeCloseTo(total, 4);
      expect(totals[at]?.high).toBeCloseTo(total, 4);
    }
    expect(certainLeader).toBe("bid-b");
  });

  // cost-and-decision reference, 3.5: acceptability of the worked bids over all weights, printed to ±.005
  test("gives the rank acceptability of the worked bids", () => {
    const that = comparisonOf(worked.evaluation);
    if (that === null) throw new RangeError("nothing to compare");
    const { bids } = drawnToEnd(rankAcceptability(that, { weights: { kind: "any" }, seed: 3, draws: 40_000 }));
    const printed = [
      [0.004, 0.075, 0.921],
      [0.716, 0.283, 0.0],
      [0.28, 0.641, 0.079],
    ];
    for (const [at, places] of printed.entries())
      for (const [place, share] of places.entries())
        expect(Math.abs((bids[at]?.places[place]?.value ?? 0) - share)).toBeLessThan(0.01);
    // by hand, B against A from the highest weight down: .26, −.084, .5, .067, .3 never add up to less than 0
    expect(dominances(that)).toEqual([{ bid: "bid-b", over: "bid-a", weights: "owners-order" }]);
  });

  /** Seconds of the year that warranties are counted in. */
  const year = 365 * 24 * 3600;

  test("lets what is not proven, ranged or given with a tolerance lie between its worst and its best", () => {
    const { evaluation } = comparison({
      A: { level: "140–150 g", warranty: "8 years" },
      B: { level: null, warranty: "5 years ± 1 years" },
      C: { level: "120 g", warranty: "8 years", evidence: "stated" },
      D: { level: "180 g", warranty: "10 years" },
    });
    expect(comparisonOf(evaluation)).toEqual({
      criteria: ["impact", "warranty"],
      shares: [0.6, 0.4],
      bids: [
        {
          ...{ bid: "bid-a", standing: "in" },
          values: [
            { kind: "between", low: 0.5, high: 0.6 },
            { kind: "known", value: 0.8 },
          ],
        },
        {
          ...{ bid: "bid-b", standing: "in" },
          values: [
            { kind: "between", low: 0, high: 1 },
            // "±": likely in the middle, and worth 0 to 1 on 0 to 10 years of 365 days
            {
              ...{ kind: "drawn", low: 0.4, high: 0.6 },
              distribution: { kind: "triangular", low: 4 * year, likely: 5 * year, high: 6 * year },
              curve: [
                { figure: 0, value: 0 },
                { figure: 10 * year, value: 1 },
              ],
            },
          ],
        },
        {
          ...{ bid: "bid-c", standing: "in" },
          values: [
            { kind: "between", low: 0, high: 1 },
            { kind: "known", value: 0.8 },
          ],
        },
        {
          ...{ bid: "bid-d", standing: "out" },
          values: [
            { kind: "known", value: expect.closeTo(0.2, 12) },
            { kind: "known", value: 1 },
          ],
        },
      ],
    });
    expect(placedBids(evaluation)).toEqual([
      { bid: "bid-a", values: [expect.closeTo(0.55, 12), 0.8] },
      { bid: "bid-b", values: [0, 0.5] },
      { bid: "bid-c", values: [0, 0.8] },
    ]);
  });

  test("holds every total of the evaluation inside the interval it gives", () => {
    const figure = fc.integer({ min: 60, max: 250 });
    const claimed = fc.record({
      level: fc.option(
        fc.tuple(figure, figure).map(([one, other]) => `${Math.min(one, other)}–${Math.max(one, other)} g`),
      ),
      warranty: fc.option(fc.integer({ min: 0, max: 14 }).map((years) => `${years} years`)),
    });
    fc.assert(
      fc.property(claimed, claimed, (A, B) => {
        const { evaluation } = comparison({ A, B });
        const that = comparisonOf(evaluation);
        const intervals = that === null ? [] : totalIntervals(that).totals;
        for (const { bid, low, high } of intervals) {
          const total = evaluation.bids.find(({ id }) => id === bid)?.score.total;
          expect(low).toBeCloseTo(total?.low ?? Number.NaN, 12);
          expect(high).toBeCloseTo(total?.high ?? Number.NaN, 12);
        }
      }),
      { numRuns: 40 },
    );
  });

  test("has nothing to compare where nothing weighs", () => {
    const { evaluation } = read({
      ...workedProject,
      requirements: {
        ...workedProject.requirements,
        criteria: workedProject.requirements.criteria.map((criterion) => ({ ...criterion, weight: "0" })),
      },
    });
    expect(comparisonOf(evaluation)).toBeNull();
    expect(valueForMoney(evaluation)).toEqual([]);
    expect(methodsOf(evaluation)).toBeNull();
  });
});

describe("singleChanges", () => {
  // cost-and-decision reference, 3.8: B stays first for a temperature weight below 0.249927
  test("finds the weight that turns the order", () => {
    expect(takes(needOn(changesOf("bid-c"), "weight", "heat"))).toBeCloseTo(0.249927, 4);
  });

  test("finds the claim that turns the order: a hair more turns it, a hair less does not", () => {
    const changes = changesOf("bid-c");
    const fall = takes(needOn(changes, "figure", "fall"));
    // by hand: 0.0468 of the total over a share of 80/370 is 0.2165 of the way from 0.9 m to 1.5 m above 1.3 m
    expect(fall).toBeCloseTo(1.3 + (0.046804 / (80 / 370)) * 0.6, 4);
    expect(leaderOf(withFigure("bid-c", "critical-fall-height", `${(fall + 1e-5).toFixed(6)} m`))).toBe("bid-c");
    expect(leaderOf(withFigure("bid-c", "critical-fall-height", `${(fall - 1e-5).toFixed(6)} m`))).toBe("bid-b");
    // the best surface temperature is worth 0.162 × 0.267 more, which is not enough
    expect(needOn(changes, "figure", "heat")).toBeUndefined();
  });

  test("finds the price that turns the order: the whole evaluation says the same", () => {
    const earthworks = (cents: number) => ({
      ...{ kind: "at-base-date", id: "earthworks", label: "Earthworks", category: "investment", givenBy: "bid" },
      amount: { kind: "lump-sum", price: `$${(cents / 100).toFixed(2)}` },
    });
    const start = 30_000_000;
    const adding = (bid: BidText, cents: number): BidText => ({
      ...bid,
      prices: [...bid.prices, earthworks(cents) as BidText["prices"][number]],
    });
    const priced = (cents: number): ProjectFile => ({
      ...workedProject,
      bids: workedProject.bids.map((bid) => adding(bid, bid.id === "bid-c" ? cents : start)),
    });
    const need = needOn(changesOf("bid-c", priced(start)), "price");
    if (need?.kind !== "takes") throw new RangeError("expected a price that is enough");
    const less = need.lever.from - need.at;
    expect(less).toBeGreaterThan(0);
    expect(less).toBeLessThan(start);
    expect(leaderOf(priced(start - Math.ceil(less) - 1))).toBe("bid-c");
    expect(leaderOf(priced(start - Math.floor(less) + 1))).toBe("bid-b");
  });

  test("says what proof would have to show where a claim is missing, and passes over figures that fail a gate", () => {
    const { project, evaluation } = comparison({
      A: { level: "130 g", warranty: "10 years" },
      B: { level: null, warranty: "8 years" },
    });
    // A has 60 × 0.7 + 40 = 82; B has 32 and needs 50 of 60 from the impact level: 200 − 83.3 = 116.7 g
    const changes = singleChanges(project, evaluation, "bid-b", ["bid-a"]);
    const [first] = changes;
    expect(first?.changed).toMatchObject({ kind: "figure", shown: null });
    expect(takes(first?.need)).toBeCloseTo(200 - (50 / 60) * 100, 6);
    expect(changes.filter(({ need }) => need.kind === "takes")).toHaveLength(1);
  });

  test("finds the first step that is enough", () => {
    const criteria = workedProject.requirements.criteria.map((criterion) =>
      criterion.id === "warranty"
        ? {
            ...criterion,
            weight: "200",
            valueFunction: {
              ...{ kind: "steps" as const, counted: "from" as const, otherwise: "0" },
              steps: [
                { at: "6 years", value: "0.1" },
                { at: "9 years", value: "0.6" },
                { at: "12 years", value: "1" },
              ],
            },
          }
        : criterion,
    );
    const file: ProjectFile = { ...workedProject, requirements: { ...workedProject.requirements, criteria } };
    const changes = changesOf("bid-c", file);
    const years = takes(needOn(changes, "figure", "warranty")) / (365.25 * 24 * 3600);
    expect([9, 12].some((step) => Math.abs(years - step) < 0.01)).toBe(true);
  });

  test("has no change for a bid that already leads, and refuses one that is out", () => {
    expect(changesOf("bid-b").every(({ need }) => need.kind === "leads-already")).toBe(true);
    const { project, evaluation } = comparison({
      A: { level: "130 g", warranty: "10 years" },
      B: { level: "190 g", warranty: "8 years" },
    });
    expect(() => singleChanges(project, evaluation, "bid-b", ["bid-a"])).toThrow(RangeError);
  });
});

describe("heldAgainst", () => {
  const [a, b, c] = worked.evaluation.bids;
  test("splits the difference of two totals by criterion", () => {
    if (a === undefined || b === undefined || c === undefined) throw new RangeError("three bids");
    const held = heldAgainst(b, c);
    // 3.8: values B [1, .8333, .3333, .6958, .8], C [1, .6667, .7333, .5182, .5]
    expect(held.level.map(({ criterion }) => criterion.id)).toEqual(["impact"]);
    expect(held.behind.map(({ criterion }) => criterion.id)).toEqual(["heat"]);
    expect(held.ahead.map(({ criterion }) => criterion.id)).toEqual(["cost", "fall", "warranty"]);
    expect(held.lead).toBeCloseTo(0.76024 - 0.713436, 5);
    const mirrored = heldAgainst(c, b);
    expect(mirrored.lead).toBeCloseTo(-held.lead, 12);
    expect(mirrored.behind.map(({ criterion }) => criterion.id)).toEqual(["cost", "fall", "warranty"]);
  });

  test("says how far an open figure leaves a lead open", () => {
    const { evaluation } = comparison({
      A: { level: "150 g", warranty: "8 years" },
      B: { level: null, warranty: "8 years" },
    });
    const [one, other] = evaluation.bids;
    if (one === undefined || other === undefined) throw new RangeError("two bids");
    const [impact] = heldAgainst(one, other).ahead;
    expect(impact).toMatchObject({ lead: 0.3, least: -0.3, most: 0.3 });
  });
});

describe("valueForMoney", () => {
  // cost-and-decision reference: B costs more than A and has more points; C costs more than B
  test("leaves out cost from the points and finds the efficient set", () => {
    const valued = valueForMoney(worked.evaluation);
    const points = (values: readonly number[]) =>
      [100, 80, 60, 0, 40].reduce((sum, weight, at) => sum + weight * (values[at] ?? 0), 0) / 280;
    expect(valued[0]?.points).toBeCloseTo(points([0.74, 0.3333, 0.2667, 0, 0.5]), 3);
    expect(valued[1]?.points).toBeCloseTo(points([1, 0.8333, 0.3333, 0, 0.8]), 3);
    expect(valued[2]?.points).toBeCloseTo(points([1, 0.6667, 0.7333, 0, 0.5]), 3);
    // B and C: 0.781 and 0.776 points, and C costs more
    expect(valued.map(({ efficient }) => efficient)).toEqual(["in", "in", "not-in"]);
    expect(valued[2]?.beatenBy).toBe("bid-b");
  });

  test("settles nothing by a cost that is known as “at least” only", () => {
    const item = { id: "base", label: "Base and drainage" };
    const open = read({
      ...workedProject,
      costing: {
        checklist: [item],
        levelling: [{ bid: "bid-b", item: "base", standing: "excluded", plug: { kind: "none" } }],
      } as NonNullable<ProjectFile["costing"]>,
    });
    const kinds = open.evaluation.bids.map((bid) => levelledCost(bid).kind);
    expect(kinds[1]).toBe("at-least");
    const valued = valueForMoney(open.evaluation);
    expect(valued[1]?.efficient).toBe("not-settled");
    expect(valued[2]?.efficient).not.toBe("not-in");
  });
});

describe("methodsOf", () => {
  test("asks the same bids by each method", () => {
    const check = methodsOf(worked.evaluation);
    expect(check?.outcomes.map(({ method, leaders }) => [method, ...leaders])).toEqual([
      ["owners-score", "bid-b"],
      ["lowest-cost", "bid-a"],
      ["cost-per-point", "bid-b"],
      ["points-alone", "bid-b"],
      ["weighted-with-price", "bid-b"],
    ]);
    expect(check?.agrees).toBe(false);
    // anchors $1.75 and $0.75 a square foot and year: half of the value of cost and half of the points
    const weighed = check?.outcomes.at(-1)?.figures[0]?.figure;
    expect(weighed).toBeCloseTo(0.5 * 0.7799 + 0.5 * ((100 * 0.74 + 80 / 3 + 60 * 0.26667 + 20) / 280), 3);
  });
});
