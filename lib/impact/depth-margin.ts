import { type Figure, figureFromInterval, type Shortfall, unknown, type Working } from "#lib/figure";
import { formatInterval, formatValue, type In, type Interval, measured } from "#lib/quantity";
import { depthLaws } from "./depth-law";
import { lossToReach } from "./depth-loss";
import { halfInchRule, type Sensitivity, sensitivityText } from "./depth-sensitivity";
import type { StatedLevel } from "./model";

/** Whose sensitivity a margin rests on, and the largest loss that it speaks of; the rule of thumb where left out. */
export type MarginBasis = Readonly<{ words: string; largestLoss: In<"m"> }>;

/** How much infill depth a spot can lose before it reaches the limit. `explainDepthMargin` says it in a sentence. */
export type DepthMargin = Readonly<
  | { kind: "margin"; figure: Figure<"length">; by?: MarginBasis }
  /** The range touches 0 or goes below: at the hard end of the stated level nothing may be lost. */
  | { kind: "may-be-none-left"; figure: Figure<"length">; by?: MarginBasis }
  /** At or above the limit already; the figure is 0 or negative. */
  | { kind: "none-left"; figure: Figure<"length">; by?: MarginBasis }
  /** Part or all of the range lies beyond the largest loss the sensitivity speaks of; the figure is a lower bound. */
  | { kind: "beyond-rule"; figure: Figure<"length">; by?: MarginBasis }
  | { kind: "unknown"; figure: Figure<"length">; by?: MarginBasis }
>;

/** Depth lost until a spot is too hard, or depth gathered until it is too soft. */
export type MarginSide = "too-hard" | "too-soft";

export type DepthMarginQuestion = Readonly<{
  /** The level as new; null where the bid gives none. */
  stated: StatedLevel | null;
  limit: In<"g">;
  sensitivity: Sensitivity;
  /** Which side the limit stands on; "too-hard" where nothing is said. */
  side?: MarginSide;
}>;

/**
 * Depth margin as the range that both readings of the law of depth, both ends of the level and both ends of the
 * sensitivity span.
 * @source derived from the sensitivity, which names its own source
 */
export function depthMargin({ stated, limit, sensitivity, side = "too-hard" }: DepthMarginQuestion): DepthMargin {
  if (sensitivity.kind === "does-not-apply") return noMargin(sensitivity.because);
  if (stated === null) return noMargin({ kind: "not-claimed", what: "an impact level as new" });
  if (!Number.isFinite(nearEnd(stated.level, side))) {
    return noMargin({ kind: "missing-input", what: `${sides[side].boundNeeded} of the impact level as new` });
  }
  const span = marginSpan(stated.level, limit, sensitivity, side);
  const working = () => marginWorking(stated, limit, sensitivity, side);
  const by = basisOf(sensitivity);
  const largest = by.largestLoss;
  const figure =
    span.high > largest
      ? figureFromInterval("length", { low: measured("length", Math.min(span.low, largest)), high: noEnd }, working)
      : figureFromInterval("length", span, working);
  if (span.high <= 0) return { kind: "none-left", figure, by };
  if (span.low <= 0) return { kind: "may-be-none-left", figure, by };
  return { kind: span.high > largest ? "beyond-rule" : "margin", figure, by };
}

/** One sentence for the page. */
export function explainDepthMargin(margin: DepthMargin, side: MarginSide = "too-hard"): string {
  const { words, largestLoss } = margin.by ?? ofTheRule;
  const { moves, end, there, left } = sides[side];
  switch (margin.kind) {
    case "margin":
      return `A spot that ${moves} this much infill depth reaches the ${there}, by ${words}.`;
    case "may-be-none-left":
      return `At the ${end} end of the stated level the ${there} is reached already, with no depth left to ${left}.`;
    case "none-left":
      return side === "too-hard"
        ? "The stated level is at or above the limit already: there is no depth left to lose."
        : "The stated level is at or below the softest level wished already: there is no depth left to gather.";
    case "beyond-rule":
      return `The margin may be more than ${bothSystems(largestLoss)}, which is beyond the range of ${words}: only its lower bound is shown.`;
    case "unknown":
      return "No depth margin can be given for this bid.";
  }
}

const ofTheRule: MarginBasis = { words: "the rule of thumb", largestLoss: halfInchRule.validFor.largestLoss };

const basisWords = {
  "rule-of-thumb": ofTheRule.words,
  "owners-value": "the owner’s sensitivity",
  "own-levels": "the bid’s own levels at lesser depths",
} as const;

const basisOf = ({ basis = "rule-of-thumb", largestLoss = ofTheRule.largestLoss }: Applying): MarginBasis => ({
  words: basisWords[basis],
  largestLoss,
});

const gathersOwn =
  "The bid’s own levels are of losses; here they are read backwards, for infill that gathers. Not frozen, not saturated.";

const sides = {
  "too-hard": {
    ...{ moves: "loses", left: "lose", end: "hard", there: "limit", boundNeeded: "an upper bound" },
    formula:
      "log-linear: margin = ln(limit ÷ level) ÷ k; linear: margin = (limit ÷ level − 1) ÷ m, with m = (e^(k × 0.5 in) − 1) ÷ 0.5 in; the range spans both",
    limit: { label: "Limit", field: "impact.limit" },
    assumption: "The loss is local and the infill that stays keeps its properties; not frozen, not saturated.",
  },
  "too-soft": {
    ...{ moves: "gathers", left: "gather", end: "soft", there: "softest level wished", boundNeeded: "a lower bound" },
    formula:
      "log-linear: margin = ln(level ÷ softest) ÷ k; linear: margin = (1 − softest ÷ level) ÷ m, with m = (e^(k × 0.5 in) − 1) ÷ 0.5 in; the range spans both",
    limit: { label: "Softest level wished", field: "impact.targetWindow.low" },
    assumption:
      "The rule of thumb speaks of losses; here it is read backwards, for infill that gathers. Not frozen, not saturated.",
  },
} as const satisfies Record<MarginSide, unknown>;

/** The end of the level that comes to the limit first. */
const nearEnd = ({ low, high }: Interval<"g">, side: MarginSide): In<"g"> => (side === "too-hard" ? high : low);

const noEnd = measured("length", Number.POSITIVE_INFINITY);

const noMargin = (because: Shortfall): DepthMargin => ({ kind: "unknown", figure: unknown("length", because) });

/** A sensitivity of 0 or less leads nowhere near the limit. */
function marginSpan(
  level: Interval<"g">,
  limit: In<"g">,
  { perDepth, range = { low: perDepth, high: perDepth } }: Applying,
  side: MarginSide,
): Interval<"m"> {
  const direction = side === "too-hard" ? 1 : -1;
  const from = (end: In<"g">) =>
    [range.low, range.high].flatMap((k) =>
      k > 0 ? depthLaws.map((law) => direction * lossToReach(end, limit, law, k)) : [noEnd],
    );
  const far = side === "too-hard" ? level.low : level.high;
  const most = far > 0 && Number.isFinite(far) ? Math.max(...from(far)) : noEnd;
  return { low: measured("length", Math.min(...from(nearEnd(level, side)))), high: measured("length", most) };
}

type Applying = Extract<Sensitivity, { kind: "applies" }>;

const marginWorking = (
  { level, from }: StatedLevel,
  limit: In<"g">,
  sensitivity: Applying,
  side: MarginSide,
): Working => ({
  formula: sides[side].formula,
  inputs: [
    { label: "Level as new", text: formatInterval("impactLevel", level, "us"), from },
    {
      label: sides[side].limit.label,
      text: formatValue("impactLevel", limit, "us"),
      from: { kind: "requirements", field: sides[side].limit.field },
    },
    {
      label: "Sensitivity to depth loss, k",
      text: `${sensitivityText(sensitivity, "us")} (${sensitivityText(sensitivity, "metric")})`,
      from: sensitivity.basis === "own-levels" ? from : { kind: "requirements", field: "impact.depthSensitivity" },
    },
  ],
  assumptions: [
    side === "too-soft" && sensitivity.basis === "own-levels" ? gathersOwn : sides[side].assumption,
    `${side === "too-hard" ? "Losses" : "Gains"} up to ${bothSystems(basisOf(sensitivity).largestLoss)} only.`,
  ],
  source: `derived; sensitivity: ${sensitivity.source}`,
});

const bothSystems = (length: In<"m">): string =>
  `${formatValue("length", length, "us")} (${formatValue("length", length, "metric")})`;
