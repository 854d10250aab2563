import { describe, expect, test } from "vitest";
import { costSwings, type LineInput, linesModel, swingChances } from "#lib/cost";
import { lineInput, perHour, setting, workedBids } from "./worked";

/** A uniform distribution whose 10th and 90th percentile are the two ends given. */
const between = (low: number, high: number) => {
  const beyond = (high - low) / 8;
  return { kind: "uniform", low: low - beyond, high: high + beyond } as const;
};
const ofA = (line: string) => [{ bid: "a", line }];
const inputs: readonly LineInput[] = [
  lineInput({ id: "rate", distribution: between(0.01, 0.05), base: 0.03, target: { kind: "real-rate" } }),
  lineInput({
    id: "wage",
    distribution: between(perHour(36), perHour(60)),
    base: perHour(48),
    target: { kind: "amount", of: ofA("grooming"), part: "unit-price", move: { kind: "set" } },
  }),
  lineInput({
    id: "growth of repairs",
    distribution: between(0, 0.04),
    base: 0.02,
    target: { kind: "escalation", of: ofA("repairs") },
  }),
];

describe("costSwings", () => {
  const [a] = costSwings(linesModel(workedBids, inputs, setting));
  // cost-and-decision reference, tornado-A
  test("gives the one-way swings of the worked Bid A, widest first", () => {
    expect(Math.round(a?.cents ?? 0)).toBe(115_458_333);
    const dollars = a?.swings.map(({ input, low, high }) => [input, Math.round(low.cents), Math.round(high.cents)]);
    expect(dollars).toEqual([
      ["rate", 125_948_619, 107_091_201],
      ["wage", 113_494_506, 117_422_160],
      ["growth of repairs", 114_977_770, 116_071_628],
    ]);
  });
  test("tries each input at its 10th and 90th percentile", () => {
    expect(swingChances).toEqual([0.1, 0.9]);
    expect(a?.swings[0]?.low.value).toBeCloseTo(0.01, 12);
    expect(a?.swings[0]?.high.value).toBeCloseTo(0.05, 12);
  });
});
