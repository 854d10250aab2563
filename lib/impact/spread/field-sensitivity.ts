import type { Shortfall } from "#lib/figure";
import { formatValue, type In, measured } from "#lib/quantity";
import { applicableSensitivity, halfInchRule, type SensitivityFacts } from "../depth-sensitivity";
import { leastSquaresLine } from "../line/least-squares";
import { slopeInterval } from "../line/line-intervals";
import type { DepthSensitivityChoice } from "../model";

/** A level measured with so much less infill than the bid's full depth. */
export type LevelAtLoss = Readonly<{ loss: In<"m">; level: In<"g"> }>;

/** How much less a spot over a shock layer answers to lost depth, as a factor from above 0 to 1, and who says so. */
export type ShockLayerFactor = Readonly<{ factor: number; source: string }>;

/**
 * Where the owner says nothing: a shock layer as soft as the infill over it.
 * @source derived: two linear springs in series share the travel; the level grows with the square root of the
 * stiffness, so its answer to depth falls to the infill's part of the travel, which is (level with ÷ level without)²
 */
export const equalSprings: ShockLayerFactor = {
  factor: 0.5,
  source: "owner's assumption: a shock layer as soft as the infill; derived from two linear springs in series",
};

/** The factor from two levels of one build, with the shock layer and without. @throws RangeError unless with ≤ without */
export function shockLayerFactor(withLayer: In<"g">, without: In<"g">): number {
  if (!(withLayer > 0 && withLayer <= without)) {
    throw new RangeError(`a level with a shock layer lies above 0 g and not above the one without, got ${withLayer}`);
  }
  return (withLayer / without) ** 2;
}

/** Sensitivity of the level to local depth loss over one field, with the range it may lie in. */
export type FieldSensitivity = Readonly<
  | {
      kind: "applies";
      perDepth: Readonly<{ low: In<"1/m">; likely: In<"1/m">; high: In<"1/m"> }>;
      source: string;
      /** The largest loss that it speaks of: the bid's own where its levels show it, else that of the rule of thumb. */
      largestLoss: In<"m">;
    }
  | { kind: "does-not-apply"; because: Shortfall }
>;

export type FieldSensitivityQuestion = Readonly<{
  facts: SensitivityFacts;
  choice: DepthSensitivityChoice;
  shockLayer: ShockLayerFactor;
  /** The bid's own levels at full depth (loss 0) and at lesser depths. */
  levelsAtLoss: readonly LevelAtLoss[];
}>;

/** Half as much to half as much again. @source owner's assumption; no published spread of the rule of thumb */
const roundTheRule = { low: 0.5, high: 1.5 };

/**
 * The bid's own evidence first; then the owner's value; then the rule of thumb where its conditions hold, lowered
 * where a shock layer lies under the carpet.
 */
export function fieldSensitivity({
  facts,
  choice,
  shockLayer,
  levelsAtLoss,
}: FieldSensitivityQuestion): FieldSensitivity {
  const own = ownEvidence(levelsAtLoss);
  if (own !== null) return own;
  const { largestLoss } = halfInchRule.validFor;
  if (choice.kind === "owners-value") {
    const perDepth = choice.perDepth.value;
    const source = `owner's value: ${choice.reason}`;
    return { kind: "applies", perDepth: { low: perDepth, likely: perDepth, high: perDepth }, source, largestLoss };
  }
  const padded = facts.shockLayer === "present";
  const applicable = applicableSensitivity(padded ? { ...facts, shockLayer: "none" } : facts, choice);
  if (applicable.kind === "does-not-apply") return { kind: "does-not-apply", because: applicable.because };
  const factor = padded ? shockLayer.factor : 1;
  const times = (share: number) => measured("depthSensitivity", halfInchRule.perDepth * factor * share);
  return {
    kind: "applies",
    perDepth: { low: times(roundTheRule.low), likely: times(1), high: times(roundTheRule.high) },
    largestLoss,
    source: padded
      ? `${halfInchRule.source}; lowered to ${formatValue("fraction", measured("fraction", factor), "us")} for the shock layer (${shockLayer.source})`
      : halfInchRule.source,
  };
}

/** Chance that goes with the range of a sensitivity fitted to three levels or more, both sides together. */
const ownChance = 0.9;

/** What the bid's own levels at two depths or more show; null where they stand at one depth only. */
export function ownEvidence(levels: readonly LevelAtLoss[]): Extract<FieldSensitivity, { kind: "applies" }> | null {
  const points = levels.map(({ loss, level }) => ({ x: Number(loss), y: Math.log(level) }));
  const losses = new Set(points.map(({ x }) => x));
  const [one, other] = points;
  const largestLoss = measured("length", Math.max(...levels.map(({ loss }) => loss)));
  if (losses.size < 2 || one === undefined || other === undefined) return null;
  if (losses.size === 2 || points.length === 2) {
    const [at, means] = meansAt(points);
    const slope = measured("depthSensitivity", ((means[1] ?? 0) - (means[0] ?? 0)) / ((at[1] ?? 0) - (at[0] ?? 0)));
    const source = "the bid's own levels at two depths, which show no scatter";
    return { kind: "applies", perDepth: { low: slope, likely: slope, high: slope }, source, largestLoss };
  }
  const { low, likely, high } = slopeInterval(leastSquaresLine(points), ownChance);
  return {
    kind: "applies",
    perDepth: {
      low: measured("depthSensitivity", low),
      likely: measured("depthSensitivity", likely),
      high: measured("depthSensitivity", high),
    },
    source: `fitted to the bid's own levels at ${losses.size} depths`,
    largestLoss,
  };
}

function meansAt(
  points: readonly Readonly<{ x: number; y: number }>[],
): readonly [readonly number[], readonly number[]] {
  const places = [...new Set(points.map(({ x }) => x))];
  const means = places.map((place) => {
    const here = points.filter(({ x }) => x === place);
    return here.reduce((total, { y }) => total + y, 0) / here.length;
  });
  return [places, means];
}
