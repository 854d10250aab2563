import { describe, expect, test } from "vitest";
import { type CriterionText, type GateRule, gateDecision } from "#lib/criteria";
import { measured } from "#lib/quantity";
import { criteriaOf, criterionText } from "./worked-score";

const open = Number.POSITIVE_INFINITY;

/** The rule as typed, on infill mass; figures in kg/m². */
function ruleOf(gate: CriterionText["gate"]): GateRule {
  const [read] = criteriaOf([criterionText({ gate })]).map((criterion) => criterion.gate);
  if (read === undefined || read.kind === "none") throw new Error("a gate was typed");
  return read;
}

const decision = (gate: CriterionText["gate"], low: number, high = low) => gateDecision(ruleOf(gate), { low, high });

describe("gateDecision", () => {
  test.each([
    [30, 30, { kind: "meets", margin: 10 }],
    [40, 40, { kind: "meets", margin: 0 }],
    [41, 41, { kind: "falls-short", margin: -1 }],
    [30, 38, { kind: "meets", margin: 2 }],
    [38, 44, { kind: "not-decided" }],
    [40, 44, { kind: "not-decided" }],
    [-open, 38, { kind: "meets", margin: 2 }],
    [38, open, { kind: "not-decided" }],
    [44, open, { kind: "falls-short", margin: -4 }],
  ])("holds %d to %d against at most 40", (low, high, expected) =>
    expect(decision({ kind: "at-most", limit: "40 kg/m²" }, low, high)).toEqual(expected),
  );

  test.each([
    [40, 40, { kind: "meets", margin: 0 }],
    [39, 39, { kind: "falls-short", margin: -1 }],
    [44, open, { kind: "meets", margin: 4 }],
    [38, 44, { kind: "not-decided" }],
    [-open, 44, { kind: "not-decided" }],
    [-open, 38, { kind: "falls-short", margin: -2 }],
  ])("holds %d to %d against at least 40", (low, high, expected) =>
    expect(decision({ kind: "at-least", limit: "40 kg/m²" }, low, high)).toEqual(expected),
  );

  test.each([
    [39, 39, { kind: "meets", margin: 1 }],
    [40, 40, { kind: "falls-short", margin: 0 }],
    [39, 40, { kind: "not-decided" }],
    [40, 41, { kind: "falls-short", margin: 0 }],
  ])("holds %d to %d against below 40", (low, high, expected) =>
    expect(decision({ kind: "below", limit: "40 kg/m²" }, low, high)).toEqual(expected),
  );

  test.each([
    [33, 33, { kind: "meets", margin: 3 }],
    [30, 40, { kind: "meets", margin: 0 }],
    [25, 25, { kind: "falls-short", margin: -5 }],
    [41, 50, { kind: "falls-short", margin: -1 }],
    [20, 28, { kind: "falls-short", margin: -2 }],
    [29, 31, { kind: "not-decided" }],
    [20, 50, { kind: "not-decided" }],
    [32, open, { kind: "not-decided" }],
    [44, open, { kind: "falls-short", margin: -4 }],
  ])("holds %d to %d against within 30 to 40", (low, high, expected) =>
    expect(decision({ kind: "within", low: "30 kg/m²", high: "40 kg/m²" }, low, high)).toEqual(expected),
  );

  // 1 lb/ft² = 4.882428 kg/m² (NIST SP 811): half of it above the limit
  test("gives the margin in SI", () => {
    const found = decision({ kind: "at-least", limit: "8 lb/ft²" }, measured("arealDensity", 8.5, "lb/ft²"));
    expect(found).toEqual({ kind: "meets", margin: expect.closeTo(2.441214, 6) });
  });

  test("passes a figure that differs from the limit by the rounding of a conversion only", () => {
    const [limit, figure] = [measured("distance", 0.25, "ft"), measured("distance", 3, "in")];
    expect(figure).not.toBe(limit);
    const [gate] = criteriaOf([
      criterionText({
        measure: "fall",
        gate: { kind: "at-least", limit: "0.25 ft" },
        valueFunction: { kind: "none" },
        weight: "0",
      }),
    ]);
    if (gate === undefined || gate.gate.kind === "none") throw new Error("a gate was typed");
    expect(gateDecision(gate.gate, { low: figure, high: figure })).toEqual({ kind: "meets", margin: 0 });
  });
});
