import { describe, expect, test } from "vitest";
import { assumptionsOf, flowsOf, type PriceLine, pricesOf } from "#lib/cost";
import { measured } from "#lib/quantity";
import { lineWith, lumpSum } from "./lines";

const area = measured("area", 80_000, "ft²");
/** Dollars by year of the parts that have any. */
const paid = (line: PriceLine, studyYears: number) =>
  Object.fromEntries(
    flowsOf(line, { area, studyYears, serviceStart: 0 })
      .map(({ part, stream }) => {
        const years = [...stream.entries()].filter(([, cents]) => cents !== 0);
        return [
          part,
          Object.fromEntries(years.map(([year, cents]) => [year, Number((cents / 100).toFixed(6))])),
        ] as const;
      })
      .filter(([, years]) => Object.keys(years).length > 0),
  );
const within = (studyYears: number) => ({ studyYears, serviceStart: 0 });
const schedules = (line: PriceLine) => pricesOf(line, within(20)).map(({ schedule }) => schedule);

describe("a price at the base date", () => {
  test("is paid in year 0", () => expect(paid(lineWith("at-base-date"), 3)).toEqual({ price: { 0: 100 } }));
  test("has a schedule in words", () =>
    expect(schedules(lineWith("at-base-date"))).toEqual(["once, at the base date"]));
  test("may be a credit", () => {
    expect(paid(lineWith("at-base-date", { amount: lumpSum("-$5,000") }), 3)).toEqual({ price: { 0: -5000 } });
  });
});

describe("a price in a later year", () => {
  test("is paid in that year", () => expect(paid(lineWith("in-year"), 6)).toEqual({ price: { 5: 100 } }));
  // by hand: 100 × 1.1²
  test("grows to that year", () => {
    expect(paid(lineWith("in-year", { year: "2", escalation: "10 %" }), 6)).toEqual({ price: { 2: 121 } });
  });
  test("after the study is left out, and that is said", () => {
    const line = lineWith("in-year", { year: "25" });
    expect(paid(line, 20)).toEqual({});
    expect(assumptionsOf(line, within(20))).toEqual([
      "“Line” is priced up to year 25; what falls after year 20, the end of the study, is not counted.",
    ]);
    expect(assumptionsOf(line, within(25))).toEqual([]);
  });
  test("has a schedule in words", () => {
    expect(schedules(lineWith("in-year", { escalation: "2 %" }))).toEqual([
      "once, at the end of year 5, growing 2 % a year over general inflation",
    ]);
  });
});

describe("a yearly price", () => {
  test("is paid from year 1 to the end of the study", () => {
    expect(paid(lineWith("yearly"), 3)).toEqual({ price: { 1: 100, 2: 100, 3: 100 } });
  });
  test("keeps to the years it names, within the study", () => {
    expect(paid(lineWith("yearly", { from: "year 2", to: "3 years" }), 5)).toEqual({ price: { 2: 100, 3: 100 } });
    expect(paid(lineWith("yearly", { from: "4", to: "9" }), 5)).toEqual({ price: { 4: 100, 5: 100 } });
  });
  // by hand: the payment of year 1 has grown once
  test("grows from the base date", () => {
    expect(paid(lineWith("yearly", { escalation: "10 %" }), 2)).toEqual({ price: { 1: 110, 2: 121 } });
  });
  test("recurs, which single payments do not", () => {
    const recurrences = [lineWith("yearly"), lineWith("periodic")].map(
      (line) => flowsOf(line, { area, studyYears: 3, serviceStart: 0 })[0],
    );
    expect(recurrences.map((flow) => flow?.recurrence)).toEqual(["yearly", "single"]);
  });
  test("has a schedule in words", () => {
    expect(schedules(lineWith("yearly", { from: "3" }))).toEqual(["in each of the years 3 to 20"]);
  });
});

describe("a price every so many years", () => {
  const deepClean = lineWith("periodic", { until: "18", except: "10" });
  test("is paid at each interval, but for the years left out", () => {
    const years = [2, 4, 6, 8, 12, 14, 16, 18];
    expect(paid(deepClean, 20)).toEqual({ price: Object.fromEntries(years.map((year) => [year, 100])) });
  });
  test("starts where it says and runs to the end of the study", () => {
    expect(paid(lineWith("periodic", { every: "3 years", from: "1" }), 7)).toEqual({
      price: { 1: 100, 4: 100, 7: 100 },
    });
  });
  test("has a schedule in words", () => {
    expect(schedules(deepClean)).toEqual(["every 2 years from year 2 to year 18, except year 10"]);
  });
});

describe("a part with a life", () => {
  const removal = lumpSum("$20");
  const carpet = (changes: Readonly<Record<string, unknown>> = {}) =>
    lineWith("replacement-chain", { removal, ...changes });

  // by hand: renewed in 8 and 16; at 20 half of the third life is used up
  test("is renewed at its life and leaves the unused share of its cost and of its removal", () => {
    expect(paid(carpet(), 20)).toEqual({
      "first-cost": { 0: 100 },
      renewal: { 8: 100, 16: 100 },
      "removal-at-renewal": { 8: 20, 16: 20 },
      "removal-at-study-end": { 20: 10 },
      residual: { 20: -50 },
    });
  });
  test("is not renewed once more where a life ends with the study", () => {
    expect(paid(carpet(), 16)).toEqual({
      "first-cost": { 0: 100 },
      renewal: { 8: 100 },
      "removal-at-renewal": { 8: 20 },
      "removal-at-study-end": { 16: 20 },
    });
  });
  test("that outlives the study is never renewed", () => {
    expect(paid(carpet({ life: "40 years" }), 20)).toEqual({
      "first-cost": { 0: 100 },
      "removal-at-study-end": { 20: 10 },
      residual: { 20: -50 },
    });
  });
  test("is removed in full or not at all where the line says so", () => {
    expect(paid(carpet({ removalAtStudyEnd: "full" }), 20)["removal-at-study-end"]).toEqual({ 20: 20 });
    expect(paid(carpet({ removalAtStudyEnd: "none" }), 20)["removal-at-study-end"]).toBeUndefined();
  });
  test("keeps no value where the line says so", () => {
    expect(paid(carpet({ residual: "none" }), 20).residual).toBeUndefined();
  });
  // by hand: a renewal costs 92; half of that is left at 20
  test("keeps the value that its line states, and costs where that is below zero", () => {
    const stated = carpet({ residual: "stated", statedResidual: "$20" });
    expect(paid(stated, 20).residual).toEqual({ 20: -20 });
    expect(paid(carpet({ residual: "stated", statedResidual: "-$7.50" }), 20).residual).toEqual({ 20: 7.5 });
    expect(assumptionsOf(stated, within(20)).at(-1)).toBe(
      "Value of “Line” left at the end of the study: $20, as stated.",
    );
  });

  test("saves a share at renewal, and its rest is a share of what was paid", () => {
    const { renewal, residual } = paid(carpet({ renewalSaving: "8 %" }), 20);
    expect([renewal, residual]).toEqual([{ 8: 92, 16: 92 }, { 20: -46 }]);
  });
  // by hand: life 1 of a study of 2: 100 × 1.1 and 20 × 1.1, then 20 × 1.1²
  test("grows in price from the base date", () => {
    expect(paid(carpet({ life: "1 year", escalation: "10 %" }), 2)).toEqual({
      "first-cost": { 0: 100 },
      renewal: { 1: 110 },
      "removal-at-renewal": { 1: 22 },
      "removal-at-study-end": { 2: 24.2 },
    });
  });
  test("tells the bidder's price from the owner's estimate of its removal", () => {
    const givers = flowsOf(carpet(), { area, studyYears: 20, serviceStart: 0 }).map(
      ({ part, givenBy }) => `${part}: ${givenBy}`,
    );
    expect(givers).toEqual([
      "first-cost: bid",
      "renewal: bid",
      "removal-at-renewal: owner-estimate",
      "removal-at-study-end: owner-estimate",
      "residual: bid",
    ]);
  });
  test("is renewed every year where its life is one year, and says nothing of a removal that is not counted", () => {
    expect(schedules(carpet({ life: "1 year", removalAtStudyEnd: "none" }))).toEqual([
      "at the base date, renewed every year",
      "each time it is renewed",
    ]);
  });
  test("has schedules and assumptions in words", () => {
    const line = carpet({ renewalSaving: "8 %", lifeGivenBy: "owner-estimate" });
    expect(schedules(line)).toEqual([
      "at the base date, renewed every 8 years at a saving of 8 %",
      "each time it is renewed and at the end of the study",
    ]);
    expect(assumptionsOf(line, within(20))).toEqual([
      "The 8-year life of “Line” is the owner’s estimate.",
      "Removal of “Line” at the end of the study: the share of the life that is used up.",
      "Value of “Line” left at the end of the study: what was last paid for it × remaining life ÷ life.",
    ]);
  });
});
