import { formatValue, measured } from "#lib/quantity";
import { applicableSensitivity, halfInchRule, type Sensitivity } from "./depth-sensitivity";
import { equalSprings, type FieldSensitivityQuestion, ownEvidence } from "./spread/field-sensitivity";

/**
 * How one spot answers to lost depth, for depth margins: the bid's own levels first, then the owner's value, then the
 * rule of thumb. Over a shock layer the rule is lowered by the owner's factor; without one it lies anywhere from the
 * lowered rule, for a layer as soft as the infill, to the rule as it stands, for a layer that takes up nothing.
 * @source derived: a layer in series can only lower the answer, so the rule itself is the upper end
 */
export function spotSensitivity({ facts, choice, shockLayer, levelsAtLoss }: FieldSensitivityQuestion): Sensitivity {
  const own = ownEvidence(levelsAtLoss);
  if (own !== null) {
    const { perDepth, source, largestLoss } = own;
    if (!(perDepth.high > 0)) return notHarder;
    const range = perDepth.low < perDepth.high ? { range: { low: perDepth.low, high: perDepth.high } } : {};
    return { kind: "applies", perDepth: perDepth.likely, source, basis: "own-levels", largestLoss, ...range };
  }
  const padded = facts.shockLayer === "present" && choice.kind !== "owners-value";
  if (!padded) return applicableSensitivity(facts, choice);
  const applicable = applicableSensitivity({ ...facts, shockLayer: "none" }, choice);
  if (applicable.kind === "does-not-apply") return applicable;
  const perDepth = measured("depthSensitivity", halfInchRule.perDepth * shockLayer.factor);
  const factor = formatValue("fraction", measured("fraction", shockLayer.factor), "us");
  if (shockLayer !== equalSprings) {
    const source = `${halfInchRule.source}; lowered to ${factor} for the shock layer (${shockLayer.source})`;
    return { kind: "applies", perDepth, source, basis: "rule-of-thumb" };
  }
  return {
    kind: "applies",
    perDepth,
    range: { low: perDepth, high: halfInchRule.perDepth },
    source: `${halfInchRule.source}; over a shock layer lowered to between ${factor} (${shockLayer.source}) and not at all`,
    basis: "rule-of-thumb",
  };
}

const reason =
  "By the bid's own levels at lesser depths a spot does not get harder as infill leaves it, so no loss leads to the limit.";

const notHarder: Sensitivity = {
  kind: "does-not-apply",
  reasons: [reason],
  because: { kind: "outside-validity", what: "the effect of lost infill depth", reason },
};
