import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type ChanceQuestion,
  chanceOutlook,
  chancesOf,
  halfInchRule,
  type SpreadBasis,
  whatMovesIt,
} from "#lib/impact";
import { inches } from "../levels";

const depth = (deviation: number): SpreadBasis => ({
  kind: "depth",
  perDepth: { low: halfInchRule.perDepth, likely: halfInchRule.perDepth, high: halfInchRule.perDepth },
  deviation: { low: inches(deviation / 2), likely: inches(deviation), high: inches(deviation * 2) },
  law: "log-linear",
});
const question = (differing: Partial<ChanceQuestion> = {}): ChanceQuestion => ({
  basis: { kind: "scenario", used: [{ years: 0, low: 120, high: 120 }], change: { low: 1, likely: 3, high: 6 } },
  resets: [],
  limits: { required: { low: null, high: 165 }, wished: { low: 90, high: 140 } },
  spread: depth(0.15),
  locations: 10,
  level: 0.95,
  years: 12,
  ...differing,
});
const starting = (level: number): Partial<ChanceQuestion> => ({
  basis: { kind: "scenario", used: [{ years: 0, low: level, high: level }], change: { low: 1, likely: 3, high: 6 } },
});
const allMeet = (asked: ChanceQuestion, year: number) => chancesOf(asked, year).decisive;

const level = fc.double({ min: 95, max: 160, noNaN: true });
const year = fc.integer({ min: 0, max: 12 });
const slack = 1e-5; // what the quadrature may miss

describe("chances of one year", () => {
  test("never rise with a harder start, a later year, a wider spread below the limit or more locations", () =>
    fc.assert(
      fc.property(
        level,
        year,
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.integer({ min: 1, max: 30 }),
        (start, at, more, n) => {
          const chance = allMeet(question({ ...starting(start), locations: n }), at);
          expect(allMeet(question({ ...starting(start + more), locations: n }), at)).toBeLessThanOrEqual(
            chance + slack,
          );
          expect(allMeet(question({ ...starting(start), locations: n }), at + 1)).toBeLessThanOrEqual(chance + slack);
          expect(allMeet(question({ ...starting(start), locations: n + 1 }), at)).toBeLessThanOrEqual(chance + slack);
        },
      ),
    ));

  test("never fall with a reset, and with one that takes all back start again", () =>
    fc.assert(
      fc.property(level, fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }), (start, done, later) => {
        const plain = question(starting(start));
        const reset = { ...plain, resets: [{ year: done, undone: 1 }] };
        expect(allMeet(reset, done + later)).toBeGreaterThanOrEqual(allMeet(plain, done + later) - slack);
        expect(allMeet(reset, done + later)).toBeCloseTo(allMeet(plain, later), 9);
        expect(allMeet(reset, done)).toBe(allMeet(plain, done));
      }),
    ));

  test("split a location into below, inside and above the window", () =>
    fc.assert(
      fc.property(level, year, (start, at) => {
        const { locations } = chancesOf(question(starting(start)), at);
        if (locations === null) throw new Error("a spread was given");
        const { locationBelowWindow, locationInWindow, locationAboveWindow, allMeet, locationMeets, meanMeets } =
          locations;
        expect(locationBelowWindow + locationInWindow + locationAboveWindow).toBeCloseTo(1, 9);
        expect(allMeet).toBeLessThanOrEqual(locationMeets + slack);
        for (const chance of [locationBelowWindow, locationInWindow, locationAboveWindow, allMeet, meanMeets]) {
          expect(chance).toBeGreaterThanOrEqual(0);
          expect(chance).toBeLessThanOrEqual(1);
        }
      }),
    ));

  test("without a spread speak of the field alone", () => {
    const { locations, decisive } = chancesOf(
      question({ spread: { kind: "unknown", because: { kind: "missing-input", what: "a spread" } } }),
      10,
    );
    expect(locations).toBeNull();
    expect(decisive).toBeCloseTo(0.85, 10); // by hand: the triangle leaves (6 − 4.5)² ÷ (5 × 3) above 4.5 g a year
  });

  test("average several values of one age and start from the last one known", () => {
    const two = question({
      basis: {
        kind: "scenario",
        used: [
          { years: 0, low: 100, high: 100 },
          { years: 4, low: 130, high: 130 },
          { years: 4, low: 150, high: 150 },
        ],
        change: { low: 2, likely: 2, high: 2 },
      },
    });
    const from = (start: number) =>
      question({
        basis: {
          kind: "scenario",
          used: [{ years: 4, low: start, high: start }],
          change: { low: 2, likely: 2, high: 2 },
        },
      });
    expect(allMeet(two, 6)).toBeCloseTo((allMeet(from(130), 6) + allMeet(from(150), 6)) / 2, 12);
    expect(allMeet(two, 3)).toBeCloseTo(
      allMeet(
        question({ basis: { ...two.basis, used: [{ years: 0, low: 100, high: 100 }] } as ChanceQuestion["basis"] }),
        3,
      ),
      12,
    );
  });

  test("are as good by the share of the level as by the depth that makes it", () => {
    const share = Math.log(1.42) * 0.3; // 0.15 in of half an inch
    const bySize = question({
      spread: { kind: "share", law: "log-linear", deviation: { low: share, likely: share, high: share } },
    });
    expect(allMeet(bySize, 6)).toBeCloseTo(allMeet(question(), 6), 12);
  });
});

// by hand: 42 % for half an inch is 0.84 per inch, so 0.15 in make 12.6 % by the linear law
test("the linear law spreads the level by an even amount per depth", () => {
  const deviation = { low: 0.126, likely: 0.126, high: 0.126 };
  const byDepth = question({ spread: { ...depth(0.15), law: "linear" } as SpreadBasis });
  const byShare = question({ spread: { kind: "share", law: "linear", deviation } });
  expect(allMeet(byDepth, 6)).toBeCloseTo(allMeet(byShare, 6), 10);
});

describe("chanceOutlook", () => {
  test("finds the first year below the owner's level", () => {
    const outlook = chanceOutlook(question());
    if (outlook.kind === "unknown") throw new Error("a value was stated");
    const below = outlook.years.filter(({ decisive }) => decisive < 0.95);
    expect(outlook.firstYearBelowLevel).toEqual({ kind: "known", year: below[0]?.year });
    expect(below.length).toBeGreaterThan(0);
    expect(outlook.years).toHaveLength(13);
    const never = chanceOutlook(question({ ...starting(60), years: 5 }));
    expect(never.kind === "chances" && never.firstYearBelowLevel).toEqual({ kind: "not-within-horizon", horizon: 5 });
  });

  test("needs both sides of a value", () => {
    const open = { years: 0, low: Number.NEGATIVE_INFINITY, high: 120 };
    const outlook = chanceOutlook(
      question({ basis: { kind: "scenario", used: [open], change: { low: 0, likely: 0, high: 0 } } }),
    );
    expect(outlook).toEqual({
      kind: "unknown",
      because: { kind: "missing-input", what: "a value with both sides stated" },
    });
  });
});

describe("whatMovesIt", () => {
  test("ranks the inputs by the years they move", () => {
    const effects = whatMovesIt(
      question({
        basis: { kind: "scenario", used: [{ years: 0, low: 110, high: 130 }], change: { low: 1, likely: 3, high: 6 } },
      }),
    );
    expect(effects.map(({ input }) => input).toSorted()).toEqual(
      ["spread over the field", "stated values", "test locations", "yearly change"].toSorted(),
    );
    const moved = effects.map(({ yearsMoved }) => yearsMoved);
    expect(moved).toEqual(moved.toSorted((one, other) => other - one));
    expect(effects.at(-1)?.input).toBe("test locations");
  });

  test("moves each input alone: its ends are the outlook of that end", () => {
    const effects = whatMovesIt(question());
    const change = effects.find(({ input }) => input === "yearly change");
    const atHigh = chanceOutlook(
      question({
        basis: { kind: "scenario", used: [{ years: 0, low: 120, high: 120 }], change: { low: 6, likely: 6, high: 6 } },
      }),
    );
    expect(change?.high.firstYearBelowLevel).toEqual(atHigh.kind === "chances" && atHigh.firstYearBelowLevel);
    expect(change?.low.chanceInThatYear).toBeGreaterThan(change?.high.chanceInThatYear ?? 1);
  });

  test("leaves out what has no range, and compares resets with none", () => {
    const effects = whatMovesIt(
      question({
        spread: { kind: "unknown", because: { kind: "missing-input", what: "a spread" } },
        resets: [{ year: 3, undone: 0.8 }],
      }),
    );
    expect(effects.map(({ input }) => input).toSorted()).toEqual(["resets", "yearly change"]);
    const resets = effects.find(({ input }) => input === "resets");
    expect(resets?.high.chanceInThatYear).toBeGreaterThanOrEqual(resets?.low.chanceInThatYear ?? 1);
  });

  test("turns a fitted line about its mean age", () => {
    const asked = (level: number) =>
      question({
        basis: {
          kind: "line",
          line: {
            ...{
              slope: 4,
              intercept: 112,
              slopeError: 1,
              interceptError: 3,
              residualDeviation: 4,
              degreesOfFreedom: 3,
            },
            ...{ meanAge: 3, errorAtMeanAge: 4 * Math.sqrt(1.2), fieldsApart: { kind: "pooled", reason: "" } },
            points: [0, 1, 3, 5, 6].map((years) => {
              return { years, halfWidth: 0, atMeanAge: 0.2, perYear: (years - 3) / 26 };
            }),
          },
        },
        level,
      });
    const changeAt = (level: number) => whatMovesIt(asked(level)).find(({ input }) => input === "yearly change");
    const late = changeAt(0.8); // first missed well after the mean age
    expect(late?.low.chanceInThatYear).toBeGreaterThan(late?.high.chanceInThatYear ?? 1);
    expect(changeAt(0.95)?.chanceMoved).toBeCloseTo(0, 12); // first missed in year 3, the mean age
  });
});
