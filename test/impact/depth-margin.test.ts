import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  depthLaws,
  depthMargin,
  explainDepthMargin,
  halfInchRule,
  levelAfterDepthLoss,
  type Sensitivity,
  type StatedLevel,
} from "#lib/impact";
import { grams, inches, stated } from "./levels";

const rule: Sensitivity = { kind: "applies", perDepth: halfInchRule.perDepth, source: halfInchRule.source };
const margin = (level: StatedLevel | null, limit = 165, sensitivity: Sensitivity = rule) =>
  depthMargin({ stated: level, limit: grams(limit), sensitivity });

describe("depthMargin", () => {
  test("lets every depth inside it be lost and none beyond it", () =>
    fc.assert(
      fc.property(fc.integer({ min: 110, max: 150 }), fc.integer({ min: 0, max: 10 }), (low, width) => {
        const { figure } = margin(stated(low, low + width));
        if (figure.kind !== "range") throw new Error(`a range was expected, got ${figure.kind}`);
        const levelsAfter = (level: number, loss: typeof figure.low) =>
          depthLaws.map((law) => levelAfterDepthLoss(grams(level), loss, law));
        expect(Math.max(...levelsAfter(low + width, figure.low))).toBeCloseTo(165, 8);
        expect(Math.min(...levelsAfter(low, figure.high))).toBeCloseTo(165, 8);
      }),
    ));

  test("shows its working", () => {
    const { figure } = margin(stated(120));
    if (figure.kind !== "range") throw new Error("a range was expected");
    expect(figure.working.inputs.map(({ label, text }) => `${label}: ${text}`)).toEqual([
      "Level as new: 120 g",
      "Limit: 165 g",
      "Sensitivity to depth loss, k: 0.701 per in (0.0276 per mm)",
    ]);
    expect(figure.working.source).toBe("derived; sensitivity: common practice, no source");
    expect(figure.working.assumptions).toContain("Losses up to 0.75 in (19.1 mm) only.");
  });

  test("is said as a margin inside the rule", () => {
    const found = margin(stated(120));
    expect(found.kind).toBe("margin");
    expect(explainDepthMargin(found)).toBe(
      "A spot that loses this much infill depth reaches the limit, by the rule of thumb.",
    );
  });

  test("is a lower bound where part of it lies beyond 0.75 in", () => {
    const found = margin(stated(120), 200);
    expect(found.kind).toBe("beyond-rule");
    expect(found.figure.kind === "at-least" && found.figure.low / inches(1)).toBeCloseTo(0.72838, 4);
    expect(explainDepthMargin(found)).toBe(
      "The margin may be more than 0.75 in (19.1 mm), which is beyond the range of the rule of thumb: only its lower bound is shown.",
    );
  });

  test("never claims more than 0.75 in", () => {
    const { figure } = margin(stated(90), 200);
    expect(figure.kind === "at-least" && figure.low).toBe(inches(0.75));
  });

  test("is 0 at the limit and negative above it", () => {
    const { kind, figure } = margin(stated(165));
    expect(kind).toBe("none-left");
    expect(figure.kind === "known" && figure.value).toBeCloseTo(0, 12);
    const above = margin(stated(175));
    expect(above.figure.kind === "range" && above.figure.high).toBeLessThan(0);
    expect(explainDepthMargin(above)).toBe(
      "The stated level is at or above the limit already: there is no depth left to lose.",
    );
  });

  test("says that the hard end has none left", () => {
    const found = margin(stated(150, 170));
    expect(found.kind).toBe("may-be-none-left");
    expect(explainDepthMargin(found)).toBe(
      "At the hard end of the stated level the limit is reached already, with no depth left to lose.",
    );
  });

  test("is a lower bound for a level stated as at most", () => {
    const { figure } = margin(stated(Number.NEGATIVE_INFINITY, 140));
    const exact = margin(stated(140)).figure;
    expect(figure.kind === "at-least" && figure.low).toBe(exact.kind === "range" && exact.low);
  });

  test.each([
    ["no level", margin(null), { kind: "not-claimed" }],
    ["a level stated as at least", margin(stated(100, Number.POSITIVE_INFINITY)), { kind: "missing-input" }],
    [
      "a rule that does not apply",
      margin(stated(120), 165, {
        kind: "does-not-apply",
        reasons: ["x"],
        because: { kind: "outside-validity", what: "the effect of lost infill depth", reason: "x" },
      }),
      { kind: "outside-validity" },
    ],
  ])("is unknown for %s", (_, found, because) => {
    expect(found).toMatchObject({ kind: "unknown", figure: { kind: "unknown", because } });
    expect(explainDepthMargin(found)).toBe("No depth margin can be given for this bid.");
  });
});

describe("depthMargin on the soft side", () => {
  const gathered = (level: StatedLevel | null, softest = 90) =>
    depthMargin({ stated: level, limit: grams(softest), sensitivity: rule, side: "too-soft" });

  // by hand: ln(120 ÷ 90) ÷ 0.701314 = 0.41020 in; (1 − 90 ÷ 120) ÷ 0.84 = 0.29762 in
  test("spans both readings, and is said as depth that gathers", () => {
    const found = gathered(stated(120));
    expect(found.figure.kind === "range" && found.figure.low / inches(1)).toBeCloseTo(0.29762, 5);
    expect(found.figure.kind === "range" && found.figure.high / inches(1)).toBeCloseTo(0.4102, 4);
    expect(explainDepthMargin(found, "too-soft")).toBe(
      "A spot that gathers this much infill depth reaches the softest level wished, by the rule of thumb.",
    );
    expect(found.figure.kind === "range" && found.figure.working.assumptions).toEqual([
      "The rule of thumb speaks of losses; here it is read backwards, for infill that gathers. Not frozen, not saturated.",
      "Gains up to 0.75 in (19.1 mm) only.",
    ]);
  });

  test("leaves a spot at the softest level after what is inside it", () =>
    fc.assert(
      fc.property(fc.integer({ min: 95, max: 130 }), fc.integer({ min: 0, max: 8 }), (low, width) => {
        const { figure } = gathered(stated(low, low + width));
        if (figure.kind !== "range") throw new Error(`a range was expected, got ${figure.kind}`);
        const levelsWith = (level: number, gain: typeof figure.low) =>
          depthLaws.map((law) => levelAfterDepthLoss(grams(level), inches(-gain / inches(1)), law));
        expect(Math.min(...levelsWith(low, figure.low))).toBeCloseTo(90, 8);
        expect(Math.max(...levelsWith(low + width, figure.high))).toBeCloseTo(90, 8);
      }),
    ));

  test("says that none is left", () => {
    expect(gathered(stated(85, 95)).kind).toBe("may-be-none-left");
    expect(explainDepthMargin(gathered(stated(85, 95)), "too-soft")).toBe(
      "At the soft end of the stated level the softest level wished is reached already, with no depth left to gather.",
    );
    expect(explainDepthMargin(gathered(stated(80)), "too-soft")).toBe(
      "The stated level is at or below the softest level wished already: there is no depth left to gather.",
    );
  });

  test("needs a lower bound", () =>
    expect(gathered(stated(Number.NEGATIVE_INFINITY, 120)).figure).toMatchObject({
      kind: "unknown",
      because: { kind: "missing-input", what: "a lower bound of the impact level as new" },
    }));
});
