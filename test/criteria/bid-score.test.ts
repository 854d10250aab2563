import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BidFigures, type Criterion, type CriterionText, type ShownFigure, scoreBid } from "#lib/criteria";
import { type Figure, figureFromInterval, known, type Shortfall, unknown } from "#lib/figure";
import { measured } from "#lib/quantity";
import { criteriaOf, criterionText, laboratory, stated, workedBids, workedTexts, working } from "./worked-score";

const mass = (value: number) => measured("arealDensity", value, "lb/ft²");
const between = (low: number, high: number): Figure =>
  figureFromInterval("arealDensity", { low: mass(low), high: mass(high) }, working);
const shown = (figure: Figure, evidence = stated): ShownFigure => ({ figure, evidence });
const open = Number.POSITIVE_INFINITY;

/** The one criterion's score: 2 to 8 lb/ft² as 0 to 1 unless told otherwise. */
function scoreOf(differing: Partial<CriterionText>, infill?: ShownFigure) {
  const bid: BidFigures = { bid: "a", shown: infill === undefined ? {} : { infill } };
  const score = scoreBid(criteriaOf([criterionText(differing)]), bid);
  const [criterion] = score.criteria;
  if (criterion === undefined) throw new Error("one criterion was scored");
  return { ...score, ...criterion };
}

const closeTo = (low: number, likely: number, high: number) => ({
  low: expect.closeTo(low, 12),
  likely: expect.closeTo(likely, 12),
  high: expect.closeTo(high, 12),
});

describe("the value of what a bid shows", () => {
  test.each<[string, Figure, ReturnType<typeof closeTo>, string]>([
    ["one number", between(5, 5), closeTo(0.5, 0.5, 0.5), "meets"],
    ["a range, at its middle", between(3.5, 6.5), closeTo(0.25, 0.5, 0.75), "meets"],
    ["a lower bound, at the bound", between(5, open), closeTo(0.5, 0.5, 1), "meets"],
    ["an upper bound, at the bound", between(-open, 5), closeTo(0, 0.5, 0.5), "not decided"],
    ["a number past the worst anchor", between(1, 1), closeTo(0, 0, 0), "falls short"],
  ])("counts %s", (_, figure, value, status) => {
    const score = scoreOf({}, shown(figure));
    expect(score.value).toEqual(value);
    expect([score.status, score.coverage, score.standing]).toEqual([status, 1, "passes all gates"]);
  });

  test("is of the measure's dimension, or the caller has a fault", () => {
    const figure = known("time", measured("time", 8, "year"), working);
    expect(() => scoreOf({}, shown(figure))).toThrow("infill is judged by arealDensity, got a figure of time");
  });
});

describe("a figure that does not count", () => {
  const notComparable: Shortfall = {
    kind: "not-comparable",
    what: "infill mass",
    wanted: "a scale",
    got: "a guess",
    reason: "One is measured.",
  };
  const ask = (shortfall: "keep-open" | "counts-as-worst" | "ask-first") => ({
    gate: { kind: "at-least" as const, limit: "3 lb/ft²" },
    evidence: { least: "laboratory", shortfall },
  });

  test("is one that the bid says nothing about", () => {
    const score = scoreOf(ask("keep-open"));
    expect(score.because).toEqual({ kind: "not-claimed", what: "infill mass per area" });
    expect([score.status, score.standing, score.coverage]).toEqual(["not shown", "gate open", 0]);
    expect(score.total).toEqual({ low: 0, likely: null, high: 1 });
  });

  test("is one obtained by another method", () => {
    const score = scoreOf(ask("keep-open"), shown(unknown("arealDensity", notComparable)));
    expect([score.status, score.because]).toEqual(["not comparable", notComparable]);
  });

  test("is one proven by less than the owner asks for, however good it looks", () => {
    const score = scoreOf(ask("keep-open"), shown(between(8, 8)));
    expect(score.because).toEqual({
      kind: "weak-evidence",
      what: "infill mass per area",
      wanted: "an accredited laboratory's report",
      got: "the bidder's statement",
    });
    expect([score.status, score.value, score.askFirst]).toEqual(["not shown", { low: 0, likely: null, high: 1 }, []]);
    expect(scoreOf(ask("keep-open"), shown(between(8, 8), laboratory)).status).toBe("meets");
  });

  test("scores its worst and fails its gate where the owner said so beforehand", () => {
    const score = scoreOf(ask("counts-as-worst"), shown(between(8, 8)));
    expect(score.value).toEqual({ low: 0, likely: 0, high: 0 });
    expect([score.gate.kind, score.standing, score.coverage]).toEqual(["falls-short-on-evidence", "fails a gate", 0]);
  });

  test("stays open and is listed where the owner wants to ask first", () => {
    const score = scoreOf(ask("ask-first"), shown(between(8, 8)));
    expect([score.standing, score.askFirst, score.total]).toEqual([
      "gate open",
      ["infill"],
      { low: 0, likely: null, high: 1 },
    ]);
  });

  test("runs from the least to the greatest value that the owner's line has, not from 0 to 1", () => {
    const knots = [
      { at: "2 lb/ft²", value: "0.2" },
      { at: "5 lb/ft²", value: "0.9" },
      { at: "8 lb/ft²", value: "0.6" },
    ];
    expect(scoreOf({ valueFunction: { kind: "piecewise", knots } }).value).toEqual({
      low: 0.2,
      likely: null,
      high: 0.9,
    });
  });
});

describe("gates", () => {
  const gate = { kind: "at-least" as const, limit: "3 lb/ft²" };

  test.each<[string, Figure, string, string]>([
    ["above the limit", between(4, 5), "meets", "passes all gates"],
    ["across the limit", between(2, 5), "not decided", "gate open"],
    ["below the limit", between(2, 2.5), "falls short", "fails a gate"],
  ])("a figure %s", (_, figure, status, standing) => {
    const score = scoreOf({ gate }, shown(figure));
    expect([score.status, score.standing]).toEqual([status, standing]);
  });

  test("carry no weight of their own and leave nothing to add up", () => {
    const score = scoreOf({ gate, valueFunction: { kind: "none" }, weight: "0" }, shown(between(4, 4)));
    expect([score.value, score.share, score.total, score.status]).toEqual([null, 0, null, "meets"]);
  });

  const read = criteriaOf([criterionText({ id: "gated", gate, weight: "1" }), criterionText({ id: "scored" })]);

  test("can't be bought back with points", () =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), (weight) => {
        const criteria = read.map((each) => (each.id === "scored" ? { ...each, weight } : each));
        const score = scoreBid(criteria, {
          bid: "a",
          shown: { gated: shown(between(2, 2)), scored: shown(between(8, 8)) },
        });
        expect(score.standing).toBe("fails a gate");
      }),
    ));
});

describe("laws of the total", () => {
  const worked = criteriaOf(workedTexts);
  const ids = worked.map(({ id }) => id);
  const dimensionOf = (id: string) => worked.find((criterion) => criterion.id === id)?.measure.dimension ?? "number";
  const figures = workedBids.flatMap(({ shown: each }) => Object.entries(each));

  /** Some of the worked figures, widened into ranges or bounds or left out. */
  const bids = fc
    .tuple(
      ...ids.map((id) =>
        fc.record({
          figure: fc.constantFrom(...figures.filter(([criterion]) => criterion === id).map(([, each]) => each.figure)),
          widened: fc.constantFrom("not", "range", "at-least", "at-most", "left-out"),
          by: fc.double({ min: 0, max: 0.5, noNaN: true }),
        }),
      ),
    )
    .map((parts): BidFigures => {
      const entries = parts.flatMap(({ figure, widened, by }, index) => {
        const id = ids[index] ?? "";
        if (widened === "left-out" || figure.kind !== "known") return [];
        const low = widened === "at-most" ? -open : widened === "not" ? figure.value : figure.value * (1 - by);
        const high = widened === "at-least" ? open : widened === "not" ? figure.value : figure.value * (1 + by);
        const dimension = dimensionOf(id);
        const interval = { low: measured(dimension, low), high: measured(dimension, high) };
        return [[id, shown(figureFromInterval(dimension, interval, working))] as const];
      });
      return { bid: "any", shown: Object.fromEntries(entries) };
    });

  const sides = (criteria: readonly Criterion[], bid: BidFigures) => {
    const { total } = scoreBid(criteria, bid);
    return [total?.low ?? -1, total?.likely ?? -1, total?.high ?? -1];
  };

  test("the total lies between 0 and 1 and its bounds hold the likely total", () =>
    fc.assert(
      fc.property(bids, (bid) => {
        const { total } = scoreBid(worked, bid);
        if (total === null) throw new Error("the criteria carry weight");
        expect(total.low).toBeGreaterThanOrEqual(0);
        expect(total.high).toBeLessThanOrEqual(1 + 1e-12);
        expect(total.low).toBeLessThanOrEqual(total.likely ?? total.high);
        expect(total.likely ?? total.low).toBeLessThanOrEqual(total.high);
      }),
    ));

  test("weights count by proportion only", () =>
    fc.assert(
      fc.property(bids, fc.double({ min: 0.001, max: 1000, noNaN: true }), (bid, factor) => {
        const scaled = worked.map((criterion) => ({ ...criterion, weight: criterion.weight * factor }));
        for (const [index, side] of sides(scaled, bid).entries()) {
          expect(Math.abs(side - (sides(worked, bid)[index] ?? Number.NaN))).toBeLessThan(1e-12);
        }
      }),
    ));

  test("the order of the criteria does not matter", () =>
    fc.assert(
      fc.property(bids, fc.shuffledSubarray([...worked], { minLength: worked.length }), (bid, shuffled) => {
        for (const [index, side] of sides(shuffled, bid).entries()) {
          expect(Math.abs(side - (sides(worked, bid)[index] ?? Number.NaN))).toBeLessThan(1e-12);
        }
      }),
    ));

  test("leaving a figure out never raises the sure total nor lowers the possible one", () =>
    fc.assert(
      fc.property(bids, fc.constantFrom(...ids), (bid, left) => {
        const silent = { ...bid, shown: Object.fromEntries(Object.entries(bid.shown).filter(([id]) => id !== left)) };
        const [before, after] = [scoreBid(worked, bid), scoreBid(worked, silent)];
        expect(after.total?.low).toBeLessThanOrEqual(before.total?.low ?? Number.NaN);
        expect(after.total?.high).toBeGreaterThanOrEqual(before.total?.high ?? Number.NaN);
        expect(after.coverage).toBeLessThanOrEqual(before.coverage);
      }),
    ));
});
