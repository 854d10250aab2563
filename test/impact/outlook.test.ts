import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  explainOutlook,
  type HardnessOutlook,
  hardnessOutlook,
  type OutlookQuestion,
  type OutlookYear,
} from "#lib/impact";
import { aged, stated } from "./levels";
import { requirement, withDrift } from "./requirement";

type Known = Extract<HardnessOutlook, { kind: "outlook" }>;
const outlook = (question: Partial<OutlookQuestion>): Known => {
  const found = hardnessOutlook({ newLevel: null, agedPoints: [], requirement, years: 12, ...question });
  if (found.kind === "unknown") throw new Error(explainOutlook(found).join(" "));
  return found;
};
const at = ({ years }: Known, year: number): OutlookYear => {
  const found = years[year];
  if (found === undefined) throw new Error(`no year ${year}`);
  return found;
};
const span = ({ low, likely, high }: OutlookYear) => [low, likely, high];
const rising = [aged(2, 114), aged(4, 121), aged(6, 124), aged(8, 133)];

describe("hardnessOutlook on the owner's scenario", () => {
  // by hand: 110 g at 0, 1 and 3 g a year
  test("adds low to low and high to high", () => {
    const found = outlook({ newLevel: stated(105, 115) });
    expect(found.premise).toBe("owner-scenario");
    expect(found.years).toHaveLength(13);
    expect(span(at(found, 0))).toEqual([105, 110, 115]);
    expect(span(at(found, 10))).toEqual([105, 120, 145]);
    expect(at(found, 10).extrapolated).toBe(true);
    expect(at(found, 0).extrapolated).toBe(false);
  });

  test("finds the first years that reach the limit", () => {
    const found = outlook({ newLevel: stated(155) });
    expect(found.firstYearLikelyAbove).toEqual({ kind: "known", year: 10 }); // 155 + 10 × 1 = 165
    expect(found.firstYearPossiblyAbove).toEqual({ kind: "known", year: 4 }); // 155 + 4 × 3 = 167
    expect(found.firstYearLikelyTooSoft).toEqual({ kind: "not-within-horizon", horizon: 12 });
  });

  test("finds a surface that is too soft as new", () => {
    const found = outlook({ newLevel: stated(85, 95) });
    expect(found.firstYearPossiblyTooSoft).toEqual({ kind: "known", year: 0 });
    expect(found.firstYearLikelyTooSoft).toEqual({ kind: "not-within-horizon", horizon: 12 });
  });

  test("does not forget a hard level at a later age", () => {
    const found = outlook({ newLevel: stated(110), agedPoints: [aged(5, 150)] });
    expect(span(at(found, 4))).toEqual([110, 114, 150]); // 150 g a year earlier was 147 to 150 g
    expect(span(at(found, 5))).toEqual([110, 150, 150]);
    expect(span(at(found, 10))).toEqual([110, 155, 165]);
    expect(at(found, 4).extrapolated).toBe(false);
    expect(at(found, 6).extrapolated).toBe(true);
  });

  test("keeps an open side open", () => {
    const found = outlook({ newLevel: stated(Number.NEGATIVE_INFINITY, 120) });
    expect(at(found, 5).level).toMatchObject({ kind: "at-most", high: 135 });
    expect(found.firstYearPossiblyTooSoft).toEqual({ kind: "open-side" });
    expect(found.firstYearLikelyTooSoft).toEqual({ kind: "open-side" });
    expect(found.firstYearPossiblyAbove).toEqual({ kind: "not-within-horizon", horizon: 12 });
    expect(explainOutlook(found).slice(1)).toEqual([
      "The hard side of the range stays below the limit of 165 g through year 12.",
      "Not every level is stated with its lower side, so nothing says how soft it may be.",
    ]);
    const least = outlook({ newLevel: stated(120, Number.POSITIVE_INFINITY) });
    expect(least.firstYearPossiblyAbove).toEqual({ kind: "open-side" });
    expect(explainOutlook(least).slice(1)).toEqual([
      "The soft side of the range does not fall below the target window, 90 g, through year 12.",
      "Not every level is stated with its upper side, so nothing says how hard it may be.",
    ]);
  });

  test("leaves a one-sided level out beside a full one, and says so", () => {
    const found = outlook({ newLevel: stated(110), agedPoints: [aged(8, Number.NEGATIVE_INFINITY, 165)] });
    expect(span(at(found, 0))).toEqual([110, 110, 110]);
    const level = at(found, 0).level;
    expect(level.kind === "known" && level.working.assumptions).toContain(
      "Levels stated with one side only are left out: 1.",
    );
  });

  test("never falls below 0 g", () =>
    expect(span(at(outlook({ newLevel: stated(20), requirement: withDrift(-9, -5, 0) }), 10))).toEqual([0, 0, 20]));

  test("names the owner's assumption in the working", () => {
    const level = at(outlook({ newLevel: stated(110) }), 3).level;
    expect(level).toMatchObject({ kind: "range", working: { source: "owner's assumption" } });
    expect(level.kind === "range" && level.working.assumptions).toContain(
      "Extrapolated: the levels used are for age 0 in years, this is year 3.",
    );
  });

  test("is never softer with more drift", () => {
    const rate = fc.integer({ min: 0, max: 5 });
    fc.assert(
      fc.property(rate, rate, rate, rate, fc.integer({ min: 0, max: 12 }), (low, a, b, more, year) => {
        const one = at(
          outlook({ newLevel: stated(100, 110), requirement: withDrift(low, low + a, low + a + b) }),
          year,
        );
        const other = at(
          outlook({
            newLevel: stated(100, 110),
            requirement: withDrift(low + more, low + a + more, low + a + b + more),
          }),
          year,
        );
        expect(other.low).toBeGreaterThanOrEqual(one.low);
        expect(other.likely).toBeGreaterThanOrEqual(one.likely);
        expect(other.high).toBeGreaterThanOrEqual(one.high);
      }),
    );
  });
});

describe("hardnessOutlook on aged data", () => {
  test("fits the bid's own levels and ignores the owner's drift", () => {
    const found = outlook({ agedPoints: rising });
    expect(found.premise).toBe("fitted-to-aged-data");
    expect(span(at(found, 6))).toEqual(span(at(outlook({ agedPoints: rising, requirement: withDrift(5, 6, 7) }), 6)));
  });

  test("counts the level as new as age 0", () => {
    const found = outlook({ newLevel: stated(110), agedPoints: [aged(4, 120), aged(8, 130)] });
    expect(found.premise).toBe("fitted-to-aged-data");
    expect(at(found, 12).likely).toBeCloseTo(140, 9); // on the line 110 + 2.5 × age
    expect(found.firstYearLikelyAbove).toEqual({ kind: "not-within-horizon", horizon: 12 });
  });

  test("marks years outside the ages tested", () =>
    expect(outlook({ agedPoints: rising }).years.map(({ extrapolated }) => extrapolated)).toEqual([
      ...[true, true],
      ...[false, false, false, false, false, false, false],
      ...[true, true, true, true],
    ]));

  test("does not depend on the order of the levels", () =>
    fc.assert(
      fc.property(fc.shuffledSubarray(rising, { minLength: 4 }), (shuffled) => {
        const [one, other] = [at(outlook({ agedPoints: rising }), 11), at(outlook({ agedPoints: shuffled }), 11)];
        expect(other.high).toBeCloseTo(one.high, 8);
        expect(other.low).toBeCloseTo(one.low, 8);
      }),
    ));

  test("keeps low, likely and high in order in every year", () =>
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 60, max: 210 })), { minLength: 1 }),
        (drawn) => {
          for (const { low, likely, high } of outlook({ agedPoints: drawn.map(([years, level]) => aged(years, level)) })
            .years) {
            expect(low).toBeLessThanOrEqual(likely);
            expect(likely).toBeLessThanOrEqual(high);
          }
        },
      ),
    ));

  test("shows the levels and the chance behind a year", () => {
    const level = at(outlook({ agedPoints: rising }), 10).level;
    if (level.kind !== "range") throw new Error("a range was expected");
    expect(level.working.inputs.map(({ label, text }) => `${label}: ${text}`)).toEqual([
      "Level at year 2: 114 g",
      "Level at year 4: 121 g",
      "Level at year 6: 124 g",
      "Level at year 8: 133 g",
      "Chance that one new test result lies in the range, both sides together: 95 %",
    ]);
    expect(level.working.source).toBe("fitted to the levels in the bid; derived by ordinary least squares");
    // by hand: mean age 5, mean level 123, b = 60 ÷ 20, s² = (0 + 1 + 4 + 1) ÷ 2; t from the printed table
    expect(level.working.assumptions[0]).toBe(
      "Line through n = 4 levels: a = 108 g, b = 3.0 g/year, scatter s = 1.7 g; t = 4.303 for 2 degrees of freedom.",
    );
    expect(level.working.assumptions).toContain(
      "Extrapolated: the levels used are for ages 2 to 8 in years, this is year 10.",
    );
  });
});

describe("explainOutlook", () => {
  test("says what is missing where the bid gives no level", () =>
    expect(explainOutlook(hardnessOutlook({ newLevel: null, agedPoints: [], requirement, years: 12 }))).toEqual([
      "The bid does not state any impact level by the required method. Ask the bidder for it.",
    ]));

  test("says what a scenario rests on and when it leaves the limit", () =>
    expect(explainOutlook(outlook({ newLevel: stated(155) }))).toEqual([
      "The yearly change is the owner's assumption. A line with an honest spread needs levels at 3 different ages; the bid gives 1 with both sides stated.",
      "The likely level first reaches the limit of 165 g in year 10.",
      "The hard side of the range first reaches the limit of 165 g in year 4.",
      "The likely level does not fall below the target window, 90 g, through year 12.",
      "The soft side of the range does not fall below the target window, 90 g, through year 12.",
    ]));

  test("says what a fitted line rests on", () =>
    expect(explainOutlook(outlook({ agedPoints: rising }))[0]).toBe(
      "Fitted to 4 levels in the bid, at ages from 2 to 8 years; outside those ages the line is extrapolated.",
    ));

  test("says that the surface is too soft as new", () =>
    expect(explainOutlook(outlook({ newLevel: stated(80) }))[3]).toBe(
      "The likely level falls below the target window, 90 g, as new.",
    ));
});

test("a horizon that is not a whole number of years is a bug of the caller", () =>
  expect(() => outlook({ newLevel: stated(110), years: 2.5 })).toThrow(RangeError));
