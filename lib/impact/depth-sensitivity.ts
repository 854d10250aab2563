import { explainShortfall, type Shortfall } from "#lib/figure";
import { formatInterval, formatValue, type In, type Interval, measured } from "#lib/quantity";
import type { DepthSensitivityChoice } from "./model";

/**
 * "Half an inch of infill less, 42 % harder", read as growth by a constant share per depth: k = ln 1.42 ÷ 0.5 in,
 * with the conditions under which the trade says it.
 * @source common practice, no source. `leastPolymerShare` is derived: a quarter by mass fills half of the poured
 * volume at about 480 kg/m³ for rubber and 1550 kg/m³ for sand.
 */
export const halfInchRule = {
  depthLoss: measured("length", 0.5, "in"),
  factor: 1.42,
  perDepth: measured("depthSensitivity", Math.log(1.42) / 0.5, "1/in"),
  validFor: {
    method: "f355-a",
    level: { low: measured("impactLevel", 90), high: measured("impactLevel", 150) },
    largestLoss: measured("length", 0.75, "in"),
    leastPolymerShare: measured("fraction", 0.25),
  },
  source: "common practice, no source",
} as const;

/** What decides whether the rule may be used. */
export type SensitivityFacts = Readonly<{
  method: string;
  /** Level of the surface as new, one-sided where the bid says so; null where it gives none. */
  level: Interval<"g"> | null;
  /** Share of rubber and other elastic granules in the infill by mass; null where it can't be told. */
  polymerShare: Interval<"1"> | null;
  shockLayer: "none" | "present" | "not-stated";
}>;

export type Sensitivity = Readonly<
  | {
      kind: "applies";
      perDepth: In<"1/m">;
      source: string;
      /** Where it may lie; left out where it is taken as it stands. */
      range?: Interval<"1/m">;
      /** Whose it is; the rule of thumb where nothing is said. */
      basis?: "own-levels" | "owners-value" | "rule-of-thumb";
      /** The largest loss that it speaks of; that of the rule of thumb where nothing is said. */
      largestLoss?: In<"m">;
    }
  /** `reasons` holds one sentence for each condition that fails; `because` says them together. */
  | { kind: "does-not-apply"; reasons: readonly string[]; because: Shortfall }
>;

/** The sensitivity to use for one bid: the owner's own value, or the rule of thumb where every condition holds. */
export function applicableSensitivity(facts: SensitivityFacts, choice: DepthSensitivityChoice): Sensitivity {
  if (choice.kind === "owners-value") {
    const source = `owner's value: ${choice.reason}`;
    return { kind: "applies", perDepth: choice.perDepth.value, source, basis: "owners-value" };
  }
  const reasons = [...methodReason(facts), ...shockLayerReason(facts), ...infillReason(facts), ...levelReason(facts)];
  if (reasons.length === 0) return { kind: "applies", perDepth: halfInchRule.perDepth, source: halfInchRule.source };
  const because = {
    kind: "outside-validity",
    what: "the effect of lost infill depth",
    reason: reasons.join(" "),
  } as const;
  return { kind: "does-not-apply", reasons, because };
}

/** Says what stands behind the sensitivity, or why there is none. */
export function explainSensitivity(sensitivity: Sensitivity): string {
  switch (sensitivity.kind) {
    case "applies":
      return `Sensitivity to depth loss ${sensitivityText(sensitivity, "us")} (${sensitivityText(sensitivity, "metric")}), ${sensitivity.source}.`;
    case "does-not-apply":
      return explainShortfall(sensitivity.because);
  }
}

/** The sensitivity, or the range it may lie in. */
export const sensitivityText = (
  { perDepth, range }: Extract<Sensitivity, { kind: "applies" }>,
  system: "us" | "metric",
): string =>
  range === undefined
    ? formatValue("depthSensitivity", perDepth, system)
    : formatInterval("depthSensitivity", range, system);

const methodReason = ({ method }: SensitivityFacts): readonly string[] =>
  method === halfInchRule.validFor.method
    ? []
    : [
        "The rule of thumb speaks of a flat 9.1 kg missile dropped from 610 mm; this level was obtained by another method.",
      ];

function shockLayerReason({ shockLayer }: SensitivityFacts): readonly string[] {
  switch (shockLayer) {
    case "none":
      return [];
    case "present":
      return [
        "A shock layer takes up part of the impact, so depth counts for less. Ask for levels at two depths of infill.",
      ];
    case "not-stated":
      return ["The bid does not say whether a shock layer lies under the carpet. Ask the bidder."];
  }
}

function infillReason({ polymerShare }: SensitivityFacts): readonly string[] {
  if (polymerShare === null) {
    return ["The bid does not say how much of the infill is rubber or another elastic granule. Ask the bidder."];
  }
  if (polymerShare.low >= halfInchRule.validFor.leastPolymerShare) return [];
  const may = polymerShare.high >= halfInchRule.validFor.leastPolymerShare ? "may fill" : "fills";
  return [
    `Sand or another material that is not elastic ${may} most of the infill; there less depth can even mean a lower level. Ask for levels at two depths of infill.`,
  ];
}

function levelReason({ level }: SensitivityFacts): readonly string[] {
  if (level === null) return ["The bid gives no level as new to start from. Ask the bidder for it."];
  const { low, high } = halfInchRule.validFor.level;
  const stated = [level.low, level.high].filter(Number.isFinite);
  if (stated.length > 0 && stated.every((end) => end >= low && end <= high)) return [];
  return [
    `The rule of thumb was made for levels of about ${formatInterval("impactLevel", { low, high }, "us")}; this one is ${formatInterval("impactLevel", level, "us")}.`,
  ];
}
