import type { Working } from "#lib/figure";
import { formatInterval, type Interval, measured } from "#lib/quantity";
import type { AgedLevel, ImpactRequirement, LevelSpan, LevelsByYear, OutlookQuestion } from "./model";

/**
 * Levels by the owner's yearly change. Every level in the bid is a start and the range spans what they lead
 * to, so that a hard level later on is not forgotten; the likely level runs on from the last one known by that year.
 * @throws RangeError without any level
 * @source owner's assumption; no yearly rate is published
 */
export const scenarioLevels = (
  used: readonly AgedLevel[],
  { ownersDrift }: OutlookQuestion["requirement"],
): LevelsByYear => ({
  spanOf: (year) => levelsIn(year, used, ownersDrift),
  working: scenarioWorking(used, ownersDrift),
});

function levelsIn(year: number, used: readonly AgedLevel[], ownersDrift: ImpactRequirement["ownersDrift"]): LevelSpan {
  const paths = used.map((start) => levelFrom(start, year, ownersDrift));
  const ages = used.map(({ years }) => years);
  const lastKnown = Math.max(...ages.filter((age) => age <= year));
  const start = Number.isFinite(lastKnown) ? lastKnown : Math.min(...ages);
  const likely = paths.filter(({ years }) => years === start).map((path) => path.likely);
  if (likely.length === 0) throw new RangeError("a scenario needs a level to start from");
  return {
    low: measured("impactLevel", Math.min(...paths.map(({ low }) => low))),
    likely: measured("impactLevel", likely.reduce((sum, level) => sum + level, 0) / likely.length),
    high: measured("impactLevel", Math.max(...paths.map(({ high }) => high))),
  };
}

/** Where one stated level leads: low with low, high with high. Backwards in time the changes trade places. */
function levelFrom(start: AgedLevel, year: number, drift: ImpactRequirement["ownersDrift"]) {
  const elapsed = year - start.years;
  const changes = [drift.low.value * elapsed, drift.high.value * elapsed];
  return {
    years: start.years,
    low: start.level.low + Math.min(...changes),
    likely: likelyLevel(start.level) + drift.likely.value * elapsed,
    high: start.level.high + Math.max(...changes),
  };
}

/** The middle, or the bound of a level stated with one side. */
function likelyLevel({ low, high }: Interval<"g">): number {
  if (!Number.isFinite(low)) return high;
  return Number.isFinite(high) ? (low + high) / 2 : low;
}

const scenarioWorking = (used: readonly AgedLevel[], drift: ImpactRequirement["ownersDrift"]): Working => ({
  formula:
    "level = stated level + yearly change × years since; low with low, high with high; the range spans every stated level",
  inputs: [
    ...used.map(({ years, level, from }) => ({
      label: years === 0 ? "Level as new" : `Level at year ${years}`,
      text: formatInterval("impactLevel", level, "us"),
      from,
    })),
    {
      label: "Yearly change, low, likely and high",
      text: [drift.low, drift.likely, drift.high].map(({ asEntered }) => asEntered).join(", "),
      from: { kind: "requirements", field: "impact.ownersDrift" },
    },
  ],
  assumptions: [
    "The yearly change is the owner's assumption, not a finding about this bid.",
    "The change is even over the years.",
  ],
  source: "owner's assumption",
});
