import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ScoreRule, valueAt, valueBounds, valueCurve, valueFunctions } from "#lib/criteria";
import { type ExactQuantity, measured } from "#lib/quantity";

const at = (value: number): ExactQuantity<"number"> => ({
  asEntered: `${value}`,
  dimension: "number",
  unit: "",
  value: measured("number", value),
});

// whole and half figures make anchors and figures meet often, which is where the corners are
const figure = fc.integer({ min: -40, max: 40 }).map((half) => half / 2);
const rising = (count: number) =>
  fc.uniqueArray(figure, { minLength: count, maxLength: count }).map((figures) => figures.sort((a, b) => a - b));
const value = fc.double({ min: 0, max: 1, noNaN: true });
const points = fc
  .integer({ min: 2, max: 5 })
  .chain((count) => fc.tuple(rising(count), fc.array(value, { minLength: count, maxLength: count })))
  .map(([figures, values]) => figures.map((each, index) => ({ at: at(each), value: values[index] ?? 0 })));

const moreIsBetter = rising(2).map(
  ([worst = 0, best = 1]): ScoreRule => ({ kind: "more-is-better", worst: at(worst), best: at(best) }),
);
const lessIsBetter = rising(2).map(
  ([best = 0, worst = 1]): ScoreRule => ({ kind: "less-is-better", worst: at(worst), best: at(best) }),
);
const targetWindow = fc.array(figure, { minLength: 4, maxLength: 4 }).map((figures): ScoreRule => {
  const [a = 0, b = 0, c = 0, d = 0] = figures.sort((first, second) => first - second);
  return { kind: "target-window", nothingBelow: at(a), fullFrom: at(b), fullTo: at(c), nothingAbove: at(d) };
});
const steps = fc
  .tuple(fc.constantFrom("from" as const, "up-to" as const), value, points)
  .map(([counted, otherwise, each]): ScoreRule => ({ kind: "steps", counted, otherwise, steps: each }));
const piecewise = points.map((knots): ScoreRule => ({ kind: "piecewise", knots }));

const rating = fc.uniqueArray(value, { minLength: 2, maxLength: 9 }).map((values): ScoreRule => {
  const rising = values.sort((one, other) => one - other);
  return {
    kind: "rating",
    levels: rising.map((each, index) => ({ ...{ id: `${index}`, label: `${index}`, description: "so" }, value: each })),
  };
});

const anyRule = fc.oneof(moreIsBetter, lessIsBetter, targetWindow, steps, piecewise, rating);
const side = fc.oneof(figure, fc.double({ min: -30, max: 30, noNaN: true }));
const end = fc.oneof(side, fc.constantFrom(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY));
const rounding = 1e-12;

describe("every value function", () => {
  test("stays between 0 and 1", () =>
    fc.assert(
      fc.property(anyRule, end, (rule, read) => {
        expect(valueAt(rule, read)).toBeGreaterThanOrEqual(0);
        expect(valueAt(rule, read)).toBeLessThanOrEqual(1);
      }),
    ));

  test("has bounds over an interval that hold the value of every figure inside", () =>
    fc.assert(
      fc.property(anyRule, end, end, side, (rule, one, other, inside) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        const bounds = valueBounds(rule, { low, high });
        const found = valueAt(rule, Math.min(Math.max(inside, low), high));
        expect(found).toBeGreaterThanOrEqual(bounds.low - rounding);
        expect(found).toBeLessThanOrEqual(bounds.high + rounding);
      }),
      { numRuns: 1000 },
    ));

  test("has bounds over an interval that are reached by a figure inside", () =>
    fc.assert(
      fc.property(anyRule, figure, figure, (rule, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        const bounds = valueBounds(rule, { low, high });
        // every corner lies on a half, so the halves of the interval reach both bounds
        const values = Array.from({ length: (high - low) * 2 + 1 }, (_, index) => valueAt(rule, low + index / 2));
        expect(Math.min(...values)).toBeLessThanOrEqual(bounds.low + rounding);
        expect(Math.max(...values)).toBeGreaterThanOrEqual(bounds.high - rounding);
      }),
      { numRuns: 1000 },
    ));

  test("has the value of one figure as both bounds over that figure", () =>
    fc.assert(
      fc.property(anyRule, side, (rule, read) => {
        const found = valueAt(rule, read);
        expect(valueBounds(rule, { low: read, high: read })).toEqual({ low: found, high: found });
      }),
    ));

  test("is drawn in rising order of figure with a corner that has the value at its figure", () =>
    fc.assert(
      fc.property(anyRule, (rule) => {
        const curve = valueCurve(rule);
        for (const [index, corner] of curve.entries()) {
          expect(corner.figure).toBeGreaterThanOrEqual(curve[index - 1]?.figure ?? Number.NEGATIVE_INFINITY);
          const here = curve.filter(({ figure: other }) => other === corner.figure).map((other) => other.value);
          expect(here).toContain(valueAt(rule, corner.figure));
        }
      }),
    ));

  test.each(Object.entries(valueFunctions))("%s says what it does in one sentence", (_, { label, explanation }) => {
    expect(label).not.toBe("");
    expect(explanation).toMatch(/^[A-Z][^.]+\.$/);
  });
});

describe("a better figure", () => {
  test("never scores less where more is better", () =>
    fc.assert(
      fc.property(moreIsBetter, end, end, (rule, one, other) => {
        expect(valueAt(rule, Math.max(one, other))).toBeGreaterThanOrEqual(valueAt(rule, Math.min(one, other)));
      }),
    ));

  test("never scores less where less is better", () =>
    fc.assert(
      fc.property(lessIsBetter, end, end, (rule, one, other) => {
        expect(valueAt(rule, Math.min(one, other))).toBeGreaterThanOrEqual(valueAt(rule, Math.max(one, other)));
      }),
    ));

  test("never scores less the nearer it is to the window", () =>
    fc.assert(
      fc.property(targetWindow, side, fc.double({ min: 0, max: 1, noNaN: true }), (rule, read, part) => {
        if (rule.kind !== "target-window") throw new Error("a window was made");
        const target = Math.min(Math.max(read, rule.fullFrom.value), rule.fullTo.value);
        expect(valueAt(rule, read + part * (target - read))).toBeGreaterThanOrEqual(valueAt(rule, read) - rounding);
      }),
    ));
});

describe("steps", () => {
  const each = [
    { at: at(8), value: 0.5 },
    { at: at(10), value: 1 },
  ];

  test.each([
    [7.9, 0.1],
    [8, 0.5],
    [9.9, 0.5],
    [10, 1],
    [99, 1],
  ])("counted from a figure value %d at %d", (read, expected) =>
    expect(valueAt({ kind: "steps", counted: "from", otherwise: 0.1, steps: each }, read)).toBe(expected),
  );

  test.each([
    [1, 0.5],
    [8, 0.5],
    [8.1, 1],
    [10, 1],
    [10.1, 0.1],
  ])("counted up to a figure value %d at %d", (read, expected) =>
    expect(valueAt({ kind: "steps", counted: "up-to", otherwise: 0.1, steps: each }, read)).toBe(expected),
  );

  test("hold at a figure that differs by the rounding of a conversion only", () => {
    const quarterFoot = { ...at(0.25 * 0.3048) };
    const rule: ScoreRule = { kind: "steps", counted: "from", otherwise: 0, steps: [{ at: quarterFoot, value: 1 }] };
    expect(3 * 0.0254).toBeLessThan(0.25 * 0.3048);
    expect(valueAt(rule, 3 * 0.0254)).toBe(1);
  });

  test("are drawn as cliffs", () => {
    const rule: ScoreRule = { kind: "steps", counted: "from", otherwise: 0, steps: each };
    expect(valueCurve(rule)).toEqual([
      { figure: 8, value: 0 },
      { figure: 8, value: 0.5 },
      { figure: 10, value: 0.5 },
      { figure: 10, value: 1 },
    ]);
  });
});

test("a window without shoulders scores in full at its own edges and nothing beyond", () => {
  const rule: ScoreRule = {
    kind: "target-window",
    nothingBelow: at(2),
    fullFrom: at(2),
    fullTo: at(4),
    nothingAbove: at(4),
  };
  expect([1.9, 2, 3, 4, 4.1].map((read) => valueAt(rule, read))).toEqual([0, 1, 1, 1, 0]);
});
