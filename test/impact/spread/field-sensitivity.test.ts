import { describe, expect, test } from "vitest";
import {
  equalSprings,
  fieldSensitivity,
  halfInchRule,
  type LevelAtLoss,
  type SensitivityFacts,
  shockLayerFactor,
} from "#lib/impact";
import { measured } from "#lib/quantity";
import { grams, inches, stated } from "../levels";
import { requirement } from "../requirement";

const facts: SensitivityFacts = {
  method: "f355-a",
  level: stated(120).level,
  polymerShare: { low: measured("fraction", 0.4), high: measured("fraction", 0.4) },
  shockLayer: "none",
};
const found = (differing: Partial<SensitivityFacts>, levelsAtLoss: readonly LevelAtLoss[] = []) =>
  fieldSensitivity({
    facts: { ...facts, ...differing },
    choice: requirement.depthSensitivity,
    shockLayer: equalSprings,
    levelsAtLoss,
  });
const likely = (of: ReturnType<typeof found>) => {
  if (of.kind !== "applies") throw new Error("no sensitivity");
  return of.perDepth.likely;
};
const at = (loss: number, level: number): LevelAtLoss => ({ loss: inches(loss), level: grams(level) });

describe("fieldSensitivity", () => {
  test("is the rule of thumb, half as much to half as much again", () => {
    const rule = found({});
    if (rule.kind !== "applies") throw new Error("the rule applies");
    expect(rule.perDepth.likely).toBe(halfInchRule.perDepth);
    expect(rule.perDepth.low / rule.perDepth.likely).toBeCloseTo(0.5, 12);
    expect(rule.perDepth.high / rule.perDepth.likely).toBeCloseTo(1.5, 12);
    expect(rule.source).toBe("common practice, no source");
  });

  test("is lowered over a shock layer and says by how much and why", () => {
    const padded = found({ shockLayer: "present" });
    expect(likely(padded)).toBeCloseTo(halfInchRule.perDepth / 2, 12);
    expect(padded.kind === "applies" && padded.source).toBe(
      "common practice, no source; lowered to 50 % for the shock layer (owner's assumption: a shock layer as soft as the infill; derived from two linear springs in series)",
    );
  });

  test("does not apply where sand fills most, nor where nobody says whether there is a shock layer", () => {
    expect(found({ polymerShare: { low: measured("fraction", 0), high: measured("fraction", 0.1) } }).kind).toBe(
      "does-not-apply",
    );
    expect(found({ shockLayer: "not-stated" }).kind).toBe("does-not-apply");
  });

  // by hand: ln(142 ÷ 100) ÷ 0.5 in, and ln(130 ÷ 100) ÷ 0.5 in
  test("is the bid's own where it gives levels at two depths, whatever the infill", () => {
    const sand = { polymerShare: { low: measured("fraction", 0), high: measured("fraction", 0) } };
    expect(likely(found({}, [at(0, 100), at(0.5, 142)]))).toBeCloseTo(halfInchRule.perDepth, 9);
    const own = found(sand, [at(0, 100), at(0.5, 130)]);
    expect(likely(own) * 0.0254).toBeCloseTo(Math.log(1.3) / 0.5, 9);
    expect(own.kind === "applies" && own.source).toBe("the bid's own levels at two depths, which show no scatter");
  });

  test("has a range of its own from three depths", () => {
    const own = found({}, [at(0, 100), at(0.25, 118), at(0.5, 138), at(0.75, 168)]);
    if (own.kind !== "applies") throw new Error("the bid shows it");
    expect(own.perDepth.low).toBeLessThan(own.perDepth.likely);
    expect(own.perDepth.high).toBeGreaterThan(own.perDepth.likely);
    expect(own.source).toBe("fitted to the bid's own levels at 4 depths");
  });

  test("can be below 0 where the surface is softer without infill", () =>
    expect(likely(found({}, [at(0, 120), at(0.5, 100)]))).toBeLessThan(0));

  test("takes one depth for no evidence", () =>
    expect(likely(found({}, [at(0, 100), at(0, 142)]))).toBe(halfInchRule.perDepth));
});

describe("shockLayerFactor", () => {
  test("is 1 for a layer that changes nothing", () => expect(shockLayerFactor(grams(120), grams(120))).toBe(1));
  test("takes no level that the layer raised", () =>
    expect(() => shockLayerFactor(grams(130), grams(120))).toThrow(RangeError));
});
