import { describe, expect, test } from "vitest";
import {
  applicableSensitivity,
  explainSensitivity,
  halfInchRule,
  impactRequirementSchema,
  type SensitivityFacts,
} from "#lib/impact";
import { measured } from "#lib/quantity";
import { stated } from "./levels";
import { typed } from "./requirement";

const share = (low: number, high: number = low) => ({
  low: measured("fraction", low),
  high: measured("fraction", high),
});
const facts: SensitivityFacts = {
  method: "f355-a",
  level: stated(110, 120).level,
  polymerShare: share(0.5),
  shockLayer: "none",
};
const reasonsFor = (change: Partial<SensitivityFacts>) => {
  const found = applicableSensitivity({ ...facts, ...change }, { kind: "common-practice" });
  return found.kind === "applies" ? [] : found.reasons;
};

describe("applicableSensitivity", () => {
  test("applies the rule of thumb where every condition holds", () =>
    expect(applicableSensitivity(facts, { kind: "common-practice" })).toEqual({
      kind: "applies",
      perDepth: halfInchRule.perDepth,
      source: "common practice, no source",
    }));

  test("does not speak for another method", () =>
    expect(reasonsFor({ method: "f355-e" })).toEqual([
      "The rule of thumb speaks of a flat 9.1 kg missile dropped from 610 mm; this level was obtained by another method.",
    ]));

  test("does not speak for a carpet over a shock layer", () =>
    expect(reasonsFor({ shockLayer: "present" })).toEqual([
      "A shock layer takes up part of the impact, so depth counts for less. Ask for levels at two depths of infill.",
    ]));

  test("asks about a shock layer that the bid does not mention", () =>
    expect(reasonsFor({ shockLayer: "not-stated" })).toEqual([
      "The bid does not say whether a shock layer lies under the carpet. Ask the bidder.",
    ]));

  test("does not speak for sand", () =>
    expect(reasonsFor({ polymerShare: share(0, 0.1) })).toEqual([
      "Sand or another material that is not elastic fills most of the infill; there less depth can even mean a lower level. Ask for levels at two depths of infill.",
    ]));

  test("says that sand may fill most where the share is a range", () =>
    expect(reasonsFor({ polymerShare: share(0.2, 0.4) })).toEqual([
      "Sand or another material that is not elastic may fill most of the infill; there less depth can even mean a lower level. Ask for levels at two depths of infill.",
    ]));

  test("asks for the infill where it can't be told", () =>
    expect(reasonsFor({ polymerShare: null })).toEqual([
      "The bid does not say how much of the infill is rubber or another elastic granule. Ask the bidder.",
    ]));

  test("speaks of levels from 90 to 150 g, ends included", () => {
    expect(reasonsFor({ level: stated(90, 150).level })).toEqual([]);
    expect(reasonsFor({ level: stated(Number.NEGATIVE_INFINITY, 120).level })).toEqual([]);
    expect(reasonsFor({ level: stated(160).level })[0]).toMatch(
      /^The rule of thumb was made for levels of about 90.+150 g; this one is 160 g\.$/,
    );
    expect(reasonsFor({ level: stated(85, 100).level })).toHaveLength(1);
  });

  test("asks for a level where there is none", () =>
    expect(reasonsFor({ level: null })).toEqual([
      "The bid gives no level as new to start from. Ask the bidder for it.",
    ]));

  test("gives each reason, and all of them in one sentence row", () => {
    const found = applicableSensitivity(
      { ...facts, method: "clegg", shockLayer: "present" },
      { kind: "common-practice" },
    );
    expect(found.kind === "does-not-apply" && found.reasons).toHaveLength(2);
    expect(explainSensitivity(found)).toBe(
      "No figure for the effect of lost infill depth: The rule of thumb speaks of a flat 9.1 kg missile dropped from 610 mm; this level was obtained by another method. A shock layer takes up part of the impact, so depth counts for less. Ask for levels at two depths of infill.",
    );
  });

  test("takes the owner's value whatever the rule of thumb says", () => {
    const own = impactRequirementSchema.parse({
      ...typed,
      depthSensitivity: { kind: "owners-value", perDepth: "0.4 1/in", reason: "own field trial" },
    }).depthSensitivity;
    const found = applicableSensitivity({ ...facts, shockLayer: "present" }, own);
    expect(found).toMatchObject({ kind: "applies", source: "owner's value: own field trial" });
    expect(explainSensitivity(found)).toBe(
      "Sensitivity to depth loss 0.400 per in (0.0157 per mm), owner's value: own field trial.",
    );
  });
});
