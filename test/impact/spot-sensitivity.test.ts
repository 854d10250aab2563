import { describe, expect, test } from "vitest";
import {
  depthMargin,
  equalSprings,
  explainDepthMargin,
  halfInchRule,
  type LevelAtLoss,
  type SensitivityFacts,
  spotSensitivity,
} from "#lib/impact";
import { measured } from "#lib/quantity";
import { grams, inches, stated } from "./levels";
import { requirement } from "./requirement";

const facts: SensitivityFacts = {
  method: "f355-a",
  level: stated(120).level,
  polymerShare: { low: measured("fraction", 0.4), high: measured("fraction", 0.4) },
  shockLayer: "none",
};
const found = (
  differing: Partial<SensitivityFacts>,
  levelsAtLoss: readonly LevelAtLoss[] = [],
  shockLayer = equalSprings,
) =>
  spotSensitivity({
    facts: { ...facts, ...differing },
    choice: requirement.depthSensitivity,
    ...{ shockLayer, levelsAtLoss },
  });
const at = (loss: number, level: number): LevelAtLoss => ({ loss: inches(loss), level: grams(level) });
const marginOf = (sensitivity: ReturnType<typeof spotSensitivity>, limit = 165) =>
  depthMargin({ stated: stated(120), limit: grams(limit), sensitivity });
const ends = ({ figure }: ReturnType<typeof depthMargin>) =>
  figure.kind === "range" ? [figure.low / inches(1), figure.high / inches(1)] : null;

describe("spotSensitivity", () => {
  test("is the rule of thumb as it stands without a shock layer", () => {
    const rule = found({});
    expect(rule).toMatchObject({ kind: "applies", perDepth: halfInchRule.perDepth });
    expect(rule.kind === "applies" && rule.range).toBeUndefined();
  });

  test("over a shock layer lies between the rule and the rule lowered", () => {
    const padded = found({ shockLayer: "present" });
    if (padded.kind !== "applies") throw new Error("the rule applies");
    expect(padded.range?.high).toBe(halfInchRule.perDepth);
    expect((padded.range?.low ?? 0) / halfInchRule.perDepth).toBeCloseTo(0.5, 12);
    expect(padded.source).toBe(
      "common practice, no source; over a shock layer lowered to between 50 % (owner's assumption: a shock layer as soft as the infill; derived from two linear springs in series) and not at all",
    );
  });

  // by hand: at the rule 0.4464 in by the linear and 0.4541 in by the log-linear reading; at half of it
  // k = 0.350657 per in, so ln(165 ÷ 120) ÷ 0.350657 = 0.9082 in, beyond the 0.75 in of the rule
  test("leaves a margin over a shock layer of at least the one without", () => {
    const margin = marginOf(found({ shockLayer: "present" }));
    expect(margin.kind).toBe("beyond-rule");
    expect(margin.figure.kind === "at-least" && margin.figure.low / inches(1)).toBeCloseTo(0.4464, 4);
  });

  test("goes by the owner's factor alone where there is one", () => {
    const owners = found({ shockLayer: "present" }, [], { factor: 0.8, source: "owner's value: two tests" });
    if (owners.kind !== "applies") throw new Error("the rule applies");
    expect(owners.perDepth / halfInchRule.perDepth).toBeCloseTo(0.8, 12);
    expect(owners.range).toBeUndefined();
  });

  test("stays unknown where nobody says whether there is a shock layer", () =>
    expect(found({ shockLayer: "not-stated" }).kind).toBe("does-not-apply"));

  // by hand: β = ln(156 ÷ 120) ÷ 0.5 in = 0.524729 per in; ln(165 ÷ 120) ÷ β = 0.60690 in, beyond the 0.5 in tested;
  // to 150 g ln(150 ÷ 120) ÷ β = 0.425255 in, by the linear reading 0.25 ÷ (0.3 ÷ 0.5 in) = 0.41667 in
  test("is the bid's own where it shows one, and holds as deep as it was tested", () => {
    const own = found({ shockLayer: "not-stated" }, [at(0, 120), at(0.5, 156)]);
    if (own.kind !== "applies") throw new Error("the bid shows it");
    expect(own.perDepth * inches(1)).toBeCloseTo(0.524729, 6);
    expect(own.largestLoss).toBe(inches(0.5));
    const beyond = marginOf(own);
    expect(beyond.figure.kind === "at-least" && beyond.figure.low / inches(1)).toBeCloseTo(0.5, 12);
    expect(explainDepthMargin(beyond)).toBe(
      "The margin may be more than 0.50 in (12.7 mm), which is beyond the range of the bid’s own levels at lesser depths: only its lower bound is shown.",
    );
    const [low, high] = ends(marginOf(own, 150)) ?? [];
    expect(low).toBeCloseTo(0.41667, 5);
    expect(high).toBeCloseTo(0.425255, 6);
    expect(explainDepthMargin(marginOf(own, 150))).toContain("by the bid’s own levels at lesser depths.");
  });

  test("says that a bid's own levels which do not rise lead to no limit", () => {
    const softer = found({}, [at(0, 120), at(0.5, 112)]);
    expect(softer).toMatchObject({ kind: "does-not-apply" });
    expect(marginOf(softer).kind).toBe("unknown");
  });

  test("leaves the far end of a margin open where the bid's own levels may not rise", () => {
    const unsure = found({}, [at(0, 120), at(0.25, 135), at(0.5, 121), at(0.75, 140)]);
    if (unsure.kind !== "applies") throw new Error("the bid shows it");
    expect(unsure.range?.low).toBeLessThan(0);
    expect(marginOf(unsure).figure.kind).toBe("at-least");
  });
});
