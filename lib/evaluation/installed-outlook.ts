import { campaignPoints, type ReducedCampaign } from "#lib/fieldtest";
import { intervalOfFigure } from "#lib/figure";
import { type ChanceOutlook, chanceOutlook, type ImpactRequirement, outlookChoices } from "#lib/impact";

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
 * @param campaigns by methods that compare with the required one, in any order
 */
export function installedOutlook(
  campaigns: readonly ReducedCampaign[],
  requirement: ImpactRequirement,
): InstalledOutlook {
  const points = campaignPoints(campaigns);
  const latest = points.at(-1);
  if (latest === undefined) {
    const because = { kind: "missing-input", what: "a campaign with three drops on a location" } as const;
    return { outlook: { kind: "unknown", because }, latestAge: 0, assumptions: [] };
  }
  const values = points.map(({ years, mean }) => ({ years, low: mean, high: mean }));
  const spread = spreadOver(campaigns.find(({ campaign }) => campaign.id === latest.campaign));
  const { ownersDrift, limit, targetWindow, chanceLevel, horizonYears, testLocations } = requirement;
  const { low, likely, high } = ownersDrift;
  const outlook = chanceOutlook({
    // one field: its scatter between campaigns is not that between fields, so no line is laid through it
    basis: { kind: "scenario", used: values, change: { low: low.value, likely: likely.value, high: high.value } },
    spread:
      spread === null
        ? { kind: "unknown", because: { kind: "missing-input", what: `levels at ${fewestSpots} locations or more` } }
        : { kind: "share", law: "log-linear", deviation: { low: spread, likely: spread, high: spread } },
    resets: outlookChoices(requirement).resets,
    limits: {
      required: { low: null, high: limit.value },
      wished: { low: targetWindow.low.value, high: targetWindow.high.value },
    },
    ...{ locations: testLocations, level: chanceLevel.value, years: Math.max(horizonYears, Math.ceil(latest.years)) },
  });
  return { outlook, latestAge: latest.years, assumptions: assumptionsOf(spread, latest.date) };
}

/** Standard deviation of the levels of one campaign as a share of their mean; null where too few were measured. */
function spreadOver(campaign: ReducedCampaign | undefined): number | null {
  const levels = (campaign?.locations ?? []).flatMap(({ level }) => intervalOfFigure(level)?.low ?? []);
  if (levels.length < fewestSpots) return null;
  const mean = levels.reduce((sum, level) => sum + level, 0) / levels.length;
  const squares = levels.reduce((sum, level) => sum + (level - mean) ** 2, 0);
  return Math.sqrt(squares / (levels.length - 1)) / mean;
}

const assumptionsOf = (spread: number | null, date: string): readonly string[] => [
  "Each campaign stands for the level of the field at its age; from the latest on the level changes by the owner’s low to high, most likely by the likely one.",
  ...(spread === null
    ? [`Too few locations were tested on ${date} to say how spots differ; ${fewestSpots} are needed.`]
    : [
        `Spots differ as they did on ${date}: by a standard deviation of ${(spread * 100).toFixed(1)} % of the mean, as much in every year.`,
      ]),
  "Locations differ independently of each other; none is frozen or soaked.",
];
