import { type Claim, type LevelAtDepth, levelsAtLesserDepth, type MethodId } from "#lib/claim";
import { type Figure, figureFromInterval, intervalOfFigure } from "#lib/figure";
import { type LevelAtLoss, ownEvidence } from "#lib/impact";
import { formatValue, type In, type Interval, intervalOf, measured } from "#lib/quantity";
import { claimInWords } from "./claim-in-words";
import { claimedFigure } from "./claimed-figure";

/** A bid's own levels by the depth lost, and what they show of the answer to lost depth; null where they show none. */
export type OwnDepthLevels = Readonly<{
  levels: readonly LevelAtLoss[];
  sensitivity: Figure<"depthSensitivity"> | null;
}>;

type Placed = Readonly<{ at: LevelAtDepth; level: In<"g">; loss: In<"m"> }>;

/**
 * Levels that a bid gives with less infill than the full depth, as losses. A depth as such is held against the full
 * depth of the bid where a level stands there too, else against the deepest of them: only differences count.
 * @param fullDepth of the infill as new, from the masses; where that is not known, the claimed one counts
 */
export function ownDepthLevels(
  bid: Readonly<{ id: string; claims: readonly Claim[] }>,
  method: MethodId,
  fullDepth: Figure<"length">,
): OwnDepthLevels {
  const found = levelsAtLesserDepth(bid.claims, "g-max", method);
  if (found.length === 0) return { levels: [], sensitivity: null };
  const asClaimed = () => claimedFigure(bid.id, bid.claims, { property: "infill-depth" }, null).figure;
  const full = middle(intervalOfFigure(fullDepth.kind === "unknown" ? asClaimed() : fullDepth));
  const placed = placedBy(found, full);
  const levels = placed.map(({ level, loss }) => ({ level, loss }));
  const own = ownEvidence(levels);
  if (own === null) return { levels, sensitivity: null };
  const { low, high } = own.perDepth;
  return {
    levels,
    sensitivity: figureFromInterval("depthSensitivity", { low, high }, workingOf(bid.id, placed, own, full)),
  };
}

function workingOf(
  bid: string,
  placed: readonly Placed[],
  { source, largestLoss }: Readonly<{ source: string; largestLoss: In<"m"> }>,
  full: In<"m"> | null,
) {
  const byDepth = placed.some(({ at }) => at.infill?.kind === "deep") && full !== null;
  return {
    formula:
      placed.length > 2
        ? "slope of ln(level) over depth lost, by least squares; the range holds it with a chance of 90 %"
        : "β = ln(level with less infill ÷ level with more) ÷ difference of the depths",
    inputs: placed.map(({ at, loss }) => ({
      label: `Level ${loss === 0 ? "at full depth" : `with ${bothSystems(loss)} lost`}`,
      text: claimInWords(at.claim),
      from: { kind: "claim" as const, bid, claim: at.claim.id },
    })),
    assumptions: [
      ...(byDepth ? [`The full depth is taken as ${bothSystems(full)}.`] : []),
      `It holds for losses up to ${bothSystems(largestLoss)}, the least infill tested; beyond that, and where the carpet lies on its base, nothing is shown.`,
      "The levels differ by the depth alone: one build, one temperature, neither frozen nor soaked.",
    ],
    source: `derived: ${source}`,
  };
}

const bothSystems = (length: In<"m">): string =>
  `${formatValue("length", length, "us")} (${formatValue("length", length, "metric")})`;

/** The middle of what is closed. */
function middle(span: Interval<"m"> | null): In<"m"> | null {
  if (span === null || !Number.isFinite(span.low) || !Number.isFinite(span.high)) return null;
  return measured("length", (span.low + span.high) / 2);
}

/** Whatever is open on one side, or has a depth that nothing can be held against, is left out. */
function placedBy(found: readonly LevelAtDepth[], full: In<"m"> | null): readonly Placed[] {
  const depths = found.map((at) => ({ at, level: levelOf(at), infill: lengthOf(at) }));
  const others = depths.some(({ at }) => at.infill?.kind !== "deep");
  const deepest = Math.max(...depths.flatMap(({ at, infill }) => (at.infill?.kind === "deep" ? (infill ?? []) : [])));
  const reference = others ? full : measured("length", deepest);
  return depths.flatMap(({ at, level, infill }): readonly Placed[] => {
    if (level === null) return [];
    if (at.infill === null) return [{ at, level, loss: measured("length", 0) }];
    if (infill === null) return [];
    if (at.infill.kind === "lost") return [{ at, level, loss: infill }];
    return reference === null ? [] : [{ at, level, loss: measured("length", Math.max(0, reference - infill)) }];
  });
}

function levelOf({ reading }: LevelAtDepth): In<"g"> | null {
  const { low, high } = intervalOf<string>(reading);
  return Number.isFinite(low) && Number.isFinite(high) && low + high > 0
    ? measured("impactLevel", (low + high) / 2)
    : null;
}

function lengthOf({ infill }: LevelAtDepth): In<"m"> | null {
  return infill === null ? null : middle(intervalOf(infill.length.reading));
}
