import { type Figure, figureFromInterval, type Shortfall, unknown, type Working } from "#lib/figure";
import { formatInterval, formatValue, type In, type Interval, measured } from "#lib/quantity";
import { depthLaws, lossToReach } from "./depth-loss";
import { halfInchRule, type Sensitivity } from "./depth-sensitivity";
import type { StatedLevel } from "./model";

/** How much infill depth a spot can lose before it reaches the limit. `explainDepthMargin` says it in a sentence. */
export type DepthMargin = Readonly<
  | { kind: "margin"; figure: Figure<"length"> }
  /** The range touches 0 or goes below: at the hard end of the stated level nothing may be lost. */
  | { kind: "may-be-none-left"; figure: Figure<"length"> }
  /** At or above the limit already; the figure is 0 or negative. */
  | { kind: "none-left"; figure: Figure<"length"> }
  /** Part or all of the range lies beyond the largest loss the rule speaks of; the figure is a lower bound. */
  | { kind: "beyond-rule"; figure: Figure<"length"> }
  | { kind: "unknown"; figure: Figure<"length"> }
>;

export type DepthMarginQuestion = Readonly<{
  /** The level as new; null where the bid gives none. */
  stated: StatedLevel | null;
  limit: In<"g">;
  sensitivity: Sensitivity;
}>;

/**
 * Depth margin as the range that both readings of the rule of thumb and both ends of the level span.
 * @source derived from the rule of thumb: common practice, no source
 */
export function depthMargin({ stated, limit, sensitivity }: DepthMarginQuestion): DepthMargin {
  if (sensitivity.kind === "does-not-apply") return noMargin(sensitivity.because);
  if (stated === null) return noMargin({ kind: "not-claimed", what: "an impact level as new" });
  if (!Number.isFinite(stated.level.high)) {
    return noMargin({ kind: "missing-input", what: "an upper bound of the impact level as new" });
  }
  const span = marginSpan(stated.level, limit, sensitivity.perDepth);
  const working = marginWorking(stated, limit, sensitivity);
  const largest = halfInchRule.validFor.largestLoss;
  const figure =
    span.high > largest
      ? figureFromInterval("length", { low: measured("length", Math.min(span.low, largest)), high: noEnd }, working)
      : figureFromInterval("length", span, working);
  if (span.high <= 0) return { kind: "none-left", figure };
  if (span.low <= 0) return { kind: "may-be-none-left", figure };
  return { kind: span.high > largest ? "beyond-rule" : "margin", figure };
}

/** One sentence for the page. */
export function explainDepthMargin(margin: DepthMargin): string {
  const largest = bothSystems(halfInchRule.validFor.largestLoss);
  switch (margin.kind) {
    case "margin":
      return "A spot that loses this much infill depth reaches the limit, by the rule of thumb.";
    case "may-be-none-left":
      return "At the hard end of the stated level the limit is reached already, with no depth left to lose.";
    case "none-left":
      return "The stated level is at or above the limit already: there is no depth left to lose.";
    case "beyond-rule":
      return `The margin may be more than ${largest}, which is beyond the range of the rule of thumb: only its lower bound is shown.`;
    case "unknown":
      return "No depth margin can be given for this bid.";
  }
}

const noEnd = measured("length", Number.POSITIVE_INFINITY);

const noMargin = (because: Shortfall): DepthMargin => ({ kind: "unknown", figure: unknown("length", because) });

function marginSpan(level: Interval<"g">, limit: In<"g">, perDepth: In<"1/m">): Interval<"m"> {
  const lossesFrom = (end: In<"g">) => depthLaws.map((law) => lossToReach(end, limit, law, perDepth));
  const soft = level.low > 0 ? Math.max(...lossesFrom(level.low)) : noEnd;
  return { low: measured("length", Math.min(...lossesFrom(level.high))), high: measured("length", soft) };
}

type Applying = Extract<Sensitivity, { kind: "applies" }>;

const marginWorking = ({ level, from }: StatedLevel, limit: In<"g">, { perDepth, source }: Applying): Working => ({
  formula:
    "log-linear: margin = ln(limit ÷ level) ÷ k; linear: margin = (limit ÷ level − 1) ÷ m, with m = (e^(k × 0.5 in) − 1) ÷ 0.5 in; the range spans both",
  inputs: [
    { label: "Level as new", text: formatInterval("impactLevel", level, "us"), from },
    {
      label: "Limit",
      text: formatValue("impactLevel", limit, "us"),
      from: { kind: "requirements", field: "impact.limit" },
    },
    {
      label: "Sensitivity to depth loss, k",
      text: `${formatValue("depthSensitivity", perDepth, "us")} (${formatValue("depthSensitivity", perDepth, "metric")})`,
      from: { kind: "requirements", field: "impact.depthSensitivity" },
    },
  ],
  assumptions: [
    "The loss is local and the infill that stays keeps its properties; not frozen, not saturated.",
    `Losses up to ${bothSystems(halfInchRule.validFor.largestLoss)} only.`,
  ],
  source: `derived; sensitivity: ${source}`,
});

const bothSystems = (length: In<"m">): string =>
  `${formatValue("length", length, "us")} (${formatValue("length", length, "metric")})`;
