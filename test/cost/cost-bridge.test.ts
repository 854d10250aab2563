import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CostCategory, costBridge, costCategories } from "#lib/cost";

const entry = (category: CostCategory, presentValue: number) => ({
  ...{ category, presentValue },
  label: costCategories[category].label,
  shown: Math.round(presentValue),
});

describe("costBridge", () => {
  test("goes from one bid to the other by what they spend differently", () =>
    expect(
      costBridge(
        [entry("investment", 60_000), entry("testing", 1_000), entry("residual", -5_000)],
        [entry("investment", 75_000), entry("testing", 1_000), entry("residual", -9_000)],
      ),
    ).toEqual({
      start: 56_000,
      steps: [
        { category: "investment", label: "Investment", from: 56_000, to: 71_000, change: 15_000 },
        { category: "residual", label: "Residual value", from: 71_000, to: 67_000, change: -4_000 },
      ],
      end: 67_000,
    }));

  test("has steps that add up to the whole difference, whatever the costs", () => {
    const cents = fc.integer({ min: -1e9, max: 1e9 });
    const bid = fc
      .array(cents, { minLength: 7, maxLength: 7 })
      .map((values) =>
        (Object.keys(costCategories) as CostCategory[]).map((category, at) => entry(category, values[at] ?? 0)),
      );
    fc.assert(
      fc.property(bid, bid, (first, second) => {
        const { start, steps, end } = costBridge(first, second);
        expect(start + steps.reduce((sum, { change }) => sum + change, 0)).toBe(end);
        expect(steps.at(-1)?.to ?? start).toBe(end);
      }),
    );
  });
});
