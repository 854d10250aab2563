import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import {
  explainShortfall,
  type Figure,
  figureFromInterval,
  formatFigure,
  intervalOfFigure,
  known,
  type Shortfall,
  unknown,
  type Working,
} from "#lib/figure";
import { type Interval, measured } from "#lib/quantity";

const working: Working = { formula: "as given", inputs: [], assumptions: [], source: "derived" };
const open = Number.POSITIVE_INFINITY;
const interval = (low: number, high: number) => ({ low, high }) as Interval<"g">;
const figure = (low: number, high: number) => figureFromInterval("impactLevel", interval(low, high), working);

describe("figureFromInterval", () => {
  test("gives one number where both ends agree", () =>
    expect(figure(90, 90)).toMatchObject({ kind: "known", value: 90 }));
  test("gives a range", () => expect(figure(90, 95)).toMatchObject({ kind: "range", low: 90, high: 95 }));
  test("gives a lower bound", () => expect(figure(90, open)).toMatchObject({ kind: "at-least", low: 90 }));
  test("gives an upper bound", () => expect(figure(-open, 95)).toMatchObject({ kind: "at-most", high: 95 }));
  test.each([
    ["upside down", 95, 90],
    ["open on both sides", -open, open],
    ["not a number", Number.NaN, 90],
    ["infinite at both ends", open, open],
  ])("takes an interval that is %s for a bug", (_, low, high) => expect(() => figure(low, high)).toThrow(RangeError));
});

describe("a working that is told when somebody reads it", () => {
  const kinds = [
    ["known", 90, 90],
    ["a range", 90, 95],
    ["at least", 90, open],
    ["at most", -open, 95],
  ] as const;
  test.each(kinds)("of a figure that is %s is told once and stands in its plain data", (_, low, high) => {
    const tell = vi.fn(() => working);
    const made = figureFromInterval("impactLevel", interval(low, high), tell);
    expect(tell).not.toHaveBeenCalled();
    expect(made).toEqual(figure(low, high));
    expect(JSON.parse(JSON.stringify(made))).toHaveProperty("working", working);
    expect({ ...made }).toHaveProperty("working", working);
    expect(tell).toHaveBeenCalledTimes(1);
  });
});

describe("intervalOfFigure", () => {
  test("gives back the interval a figure was made from", () => {
    const end = fc.double({ noNaN: true, noDefaultInfinity: true }).map((number) => number + 0) /* no negative zero */;
    const made = fc
      .tuple(end, end)
      .map(([one, other]) => [Math.min(one, other), Math.max(one, other)] as const)
      .chain(([low, high]) => fc.constantFrom(interval(low, high), interval(low, open), interval(-open, high)));
    fc.assert(
      fc.property(made, (given) => {
        expect(intervalOfFigure(figure(given.low, given.high))).toEqual(given);
      }),
    );
  });
  test("gives none for an unknown figure", () =>
    expect(intervalOfFigure(unknown("mass", { kind: "missing-input", what: "the field area" }))).toBeNull());
});

describe("formatFigure", () => {
  const pounds = (number: number) => measured("arealDensity", number, "lb/ft²");
  const range = figureFromInterval("arealDensity", { low: pounds(8.5), high: pounds(9) }, working);
  test.each<[Figure, string, string]>([
    [known("arealDensity", pounds(8.9), working), "8.90 lb/ft²", "43.5 kg/m²"],
    [range, "8.50–9.00 lb/ft²", "41.5–43.9 kg/m²"],
    [figure(90, open), "at least 90 g", "at least 90 g"],
    [figure(-open, 165), "at most 165 g", "at most 165 g"],
    [unknown("mass", { kind: "missing-input", what: "the field area" }), "not known", "not known"],
  ])("shows a figure in both systems", (given, us, metric) => {
    expect(formatFigure(given, "us")).toBe(us);
    expect(formatFigure(given, "metric")).toBe(metric);
  });
});

describe("explainShortfall", () => {
  const what = "the impact level when new";
  test.each<[Shortfall, string]>([
    [{ kind: "not-claimed", what }, "The bid does not state the impact level when new. Ask the bidder for it."],
    [
      { kind: "not-comparable", what, wanted: "ASTM F355-A", got: "EN 14808", reason: "the missiles differ." },
      "The bid gives the impact level when new by EN 14808, not by ASTM F355-A: the missiles differ. Ask for a figure by ASTM F355-A.",
    ],
    [
      { kind: "weak-evidence", what, wanted: "a report of an accredited laboratory", got: "a plain statement" },
      "The bid shows the impact level when new by a plain statement; the requirements ask for a report of an accredited laboratory.",
    ],
    [{ kind: "missing-input", what: "the field area" }, "This figure needs the field area."],
    [
      { kind: "outside-validity", what: "the depth margin", reason: "sand-dominated infill can harden the other way." },
      "No figure for the depth margin: sand-dominated infill can harden the other way.",
    ],
    [
      { kind: "not-a-figure", what, words: "very soft" },
      "The bid describes the impact level when new in words only: “very soft”. Ask for a figure.",
    ],
  ])("says why there is no figure: $kind", (shortfall, sentence) => expect(explainShortfall(shortfall)).toBe(sentence));
});
