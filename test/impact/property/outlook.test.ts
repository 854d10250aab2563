import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chanceOutlook, explainPropertyChances, explainPropertyYear, propertyOutlook } from "#lib/impact";
import { measured } from "#lib/quantity";

const percent = (value: number) => measured("fraction", value / 100);
const absorbing = (stated: readonly (readonly [years: number, value: number])[], undone = 0, years = 10) =>
  propertyOutlook({
    dimension: "fraction",
    what: "shock absorption",
    stated: stated.map(([age, value]) => ({ years: age, value: { low: percent(value), high: percent(value) } })),
    change: { low: -0.02, likely: -0.01, high: 0 },
    limits: { low: percent(55), high: percent(70) },
    chance: 0.95,
    resets: undone > 0 ? [{ year: 4, undone }] : [],
    years,
  });
const known = (found: ReturnType<typeof absorbing>) => {
  if (found.kind === "unknown") throw new Error("values were stated");
  return found;
};

describe("propertyOutlook of shock absorption", () => {
  // by hand: 64 % less one point a year
  test("runs down to the lower limit by the owner's change", () => {
    const found = known(absorbing([[0, 64]]));
    expect(found.premise).toBe("owner-scenario");
    expect(found.years[5]?.likely).toBeCloseTo(0.59, 12);
    expect(found.firstYears.likelyBelow).toEqual({ kind: "known", year: 10 });
    expect(found.firstYears.possiblyBelow).toEqual({ kind: "known", year: 5 });
    expect(found.firstYears.likelyAbove).toEqual({ kind: "not-within-horizon", horizon: 10 });
  });

  test("follows its own values where they have three ages", () => {
    const found = known(absorbing([[0, 68], [3, 65], [6, 62]])); // biome-ignore format: pairs
    expect(found.premise).toBe("fitted-to-aged-data");
    expect(found.noLine).toBeNull();
    expect(found.years[9]?.likely).toBeCloseTo(0.59, 10);
    expect(found.years[9]?.extrapolated).toBe(true);
  });

  test("says that nothing is stated", () =>
    expect(absorbing([])).toEqual({ kind: "unknown", because: { kind: "not-claimed", what: "shock absorption" } }));

  // by hand: 64 − 4 = 60 % before, half of 4 points back makes 62 % after, 61 % a year later
  test("saws back after a top-up", () => {
    const { years } = known(absorbing([[0, 64]], 0.5));
    expect(years[4]?.likely).toBeCloseTo(0.6, 12);
    expect(years[4]?.afterReset?.likely).toBeCloseTo(0.62, 12);
    expect(years[5]?.likely).toBeCloseTo(0.61, 12);
    expect(years[3]?.afterReset).toBeNull();
  });

  test("is nowhere worse for more taken back", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (less, more) => {
          const [one, other] = [known(absorbing([[0, 64]], less)), known(absorbing([[0, 64]], less + more))];
          for (const [year, { likely, low }] of one.years.entries()) {
            expect(other.years[year]?.likely).toBeGreaterThanOrEqual(likely - 1e-12);
            expect(other.years[year]?.low).toBeGreaterThanOrEqual(low - 1e-12);
          }
        },
      ),
    ));

  test("takes whole years only", () => expect(() => absorbing([[0, 64]], 0, 2.5)).toThrow(RangeError));

  // the chances behind the words by adaptive quadrature in SciPy 1.17.1: 0.743 and 0.909
  test("has chances on both sides, in sentences", () => {
    const { basis } = known(absorbing([[0, 64]]));
    const deviation = { low: 0.015, likely: 0.015, high: 0.015 };
    const outlook = chanceOutlook({
      ...{ basis, resets: [], locations: 6, level: 0.95, years: 10 },
      limits: { required: { low: 0.55, high: 0.7 }, wished: { low: 0.6, high: 0.7 } },
      spread: { kind: "amount", deviation },
    });
    const told = { letter: "B", dimension: "fraction", belowWindow: "below" } as const;
    expect(explainPropertyChances(outlook, told)).toEqual([
      "The chance that all 6 test locations stay within 55–70 % first falls below 95 % in year 4.",
      "In year 10, 7 in 10 fields like bid B would have at least one of 6 test locations outside 55–70 %, if the owner's assumptions hold.",
      "In year 10, 91 in 100 locations on fields like bid B would be below 60 %, if the owner's assumptions hold.",
    ]);
    expect(explainPropertyYear(outlook, 0, told)).toEqual([
      "As new, fewer than 1 in 100 fields like bid B would have at least one of 6 test locations outside 55–70 %, if the owner's assumptions hold.",
    ]);
    expect(explainPropertyYear(outlook, 11, told)).toEqual([]);
  });
});

test("a rotational resistance that may not fall counts on the lower side alone", () => {
  const outlook = chanceOutlook({
    basis: { kind: "scenario", used: [{ years: 0, low: 34, high: 34 }], change: { low: -1, likely: -1, high: -1 } },
    limits: { required: { low: 30, high: null }, wished: { low: null, high: null } },
    ...{ spread: { kind: "unknown", because: { kind: "missing-input", what: "a spread" } }, resets: [] },
    ...{ locations: 6, level: 0.95, years: 6 },
  });
  if (outlook.kind === "unknown") throw new Error("a value was stated");
  expect(outlook.years.map(({ decisive }) => decisive)).toEqual([1, 1, 1, 1, 1, 0, 0]);
  expect(outlook.firstYearBelowLevel).toEqual({ kind: "known", year: 5 });
  expect(explainPropertyChances(outlook, { letter: "A", dimension: "torque", belowWindow: "below" })[0]).toBe(
    "The chance that the field as a whole stays at or above 22.1 lbf·ft first falls below 95 % in year 5.",
  );
});
