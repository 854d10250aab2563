import { campaignPoints, type ReducedCampaign } from "#lib/fieldtest";
import { intervalOfFigure } from "#lib/figure";
import {
  type ChanceOutlook,
  chanceOutlook,
  type FieldSensitivity,
  gridSpread,
  type ImpactRequirement,
  outlookChoices,
  type SpreadBasis,
  wantedChance,
} from "#lib/impact";
import { formatValue } from "#lib/quantity";
import { latestDepthGrid } from "./latest-depth-grid";

/** Fewer spots than this say little of how a field differs from spot to spot. @source common practice, no source */
const fewestSpots = 5;

/** What the tests on the finished field say of its years to come. */
export type InstalledOutlook = Readonly<{
  outlook: ChanceOutlook;
  /** Of the field at the latest test, in years; what comes before it has been measured. */
  latestAge: number;
  /** What it rests on, in sentences. */
  assumptions: readonly string[];
}>;

/**
 * Chances of the installed field year by year, from its own campaigns: the mean of each is its level at that age, and the
 * locations of the latest say how spots differ. How the level changes after that is the owner's assumption.
 * Where the owner lets a grid of infill depths set the spread and the sensitivity to depth is known, that grid counts
 * instead of the levels.
 * @param campaigns by methods that compare with the required one, in any order
 * @param sensitivity of the installed system to lost depth; null where no bid is named
 */
export function installedOutlook(
  campaigns: readonly ReducedCampaign[],
  requirement: ImpactRequirement,
  sensitivity: FieldSensitivity | null = null,
): InstalledOutlook {
  const points = campaignPoints(campaigns);
  const latest = points.at(-1);
  if (latest === undefined) {
    const because = { kind: "missing-input", what: "a campaign with three drops on a location" } as const;
    return { outlook: { kind: "unknown", because }, latestAge: 0, assumptions: [] };
  }
  const values = points.map(({ years, mean }) => ({ years, low: mean, high: mean }));
  const spread = spreadOver(campaigns.find(({ campaign }) => campaign.id === latest.campaign));
  const grid = gridSpread(requirement, latestDepthGrid(campaigns.map(({ campaign }) => campaign)));
  const { ownersDrift, limit, targetWindow, horizonYears, testLocations } = requirement;
  const { low, likely, high } = ownersDrift;
  const outlook = chanceOutlook({
    // one field: its scatter between campaigns is not that between fields, so no line is laid through it
    basis: { kind: "scenario", used: values, change: { low: low.value, likely: likely.value, high: high.value } },
    spread: spreadBasis(spread, grid, sensitivity, requirement),
    resets: outlookChoices(requirement).resets,
    limits: {
      required: { low: null, high: limit.value },
      wished: { low: targetWindow.low.value, high: targetWindow.high.value },
    },
    ...{
      locations: testLocations,
      level: wantedChance(requirement).value,
      years: Math.max(horizonYears, Math.ceil(latest.years)),
    },
  });
  return {
    outlook,
    latestAge: latest.years,
    assumptions: assumptionsOf(spread, latest.date, gridSentences(grid, sensitivity)),
  };
}

/** Standard deviation of the levels of one campaign as a share of their mean; null where too few were measured. */
function spreadOver(campaign: ReducedCampaign | undefined): number | null {
  const levels = (campaign?.locations ?? []).flatMap(({ level }) => intervalOfFigure(level)?.low ?? []);
  if (levels.length < fewestSpots) return null;
  const mean = levels.reduce((sum, level) => sum + level, 0) / levels.length;
  const squares = levels.reduce((sum, level) => sum + (level - mean) ** 2, 0);
  return Math.sqrt(squares / (levels.length - 1)) / mean;
}

type Grid = ReturnType<typeof gridSpread>;

function spreadBasis(
  ofLevels: number | null,
  grid: Grid,
  sensitivity: FieldSensitivity | null,
  requirement: ImpactRequirement,
): SpreadBasis {
  const { law } = outlookChoices(requirement);
  if (grid.kind === "counts" && sensitivity?.kind === "applies")
    return { kind: "depth", perDepth: sensitivity.perDepth, deviation: grid.deviation, law };
  return ofLevels === null
    ? { kind: "unknown", because: { kind: "missing-input", what: `levels at ${fewestSpots} locations or more` } }
    : { kind: "share", law: "log-linear", deviation: { low: ofLevels, likely: ofLevels, high: ofLevels } };
}

/** What is said of a grid, and whether it takes the place of the levels. */
function gridSentences(grid: Grid, sensitivity: FieldSensitivity | null) {
  if (grid.kind === "does-not-count") return { counts: false, sentences: grid.sentence === null ? [] : [noGrid] };
  if (sensitivity?.kind !== "applies") return { counts: false, sentences: [noSensitivity] };
  const [us, metric] = (["us", "metric"] as const).map((system) =>
    formatValue("depthSensitivity", sensitivity.perDepth.likely, system),
  );
  return {
    counts: true,
    sentences: [grid.sentence, `Sensitivity to depth loss ${us} (${metric}), ${sensitivity.source}.`],
  };
}

const noGrid = "The owner wants the spread from measured depths; too few were measured, so the levels count.";
const noSensitivity =
  "The owner wants the spread from measured depths; how the level answers to lost depth is not known, so the levels count.";

const assumptionsOf = (
  spread: number | null,
  date: string,
  grid: Readonly<{ counts: boolean; sentences: readonly string[] }>,
): readonly string[] => [
  "Each campaign stands for the level of the field at its age; from the latest on the level changes by the owner’s low to high, most likely by the likely one.",
  ...grid.sentences,
  ...(grid.counts
    ? []
    : spread === null
      ? [`Too few locations were tested on ${date} to say how spots differ; ${fewestSpots} are needed.`]
      : [
          `Spots differ as they did on ${date}: by a standard deviation of ${(spread * 100).toFixed(1)} % of the mean, as much in every year.`,
        ]),
  "Locations differ independently of each other; none is frozen or soaked.",
];
