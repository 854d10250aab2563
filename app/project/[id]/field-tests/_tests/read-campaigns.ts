import { comparability, type MethodId, matchMethod } from "#lib/claim";
import type { Project } from "#lib/evaluation";
import { type Campaign, type LevelLimit, type ReducedCampaign, reducedCampaign } from "#lib/fieldtest";

/** A campaign with the bid whose system was installed; empty where that is none of the project's. */
export type InstalledCampaign = Campaign & Readonly<{ installed: string }>;

/** A campaign worked out, and whether the owner's limit speaks of its method at all. */
export type ReadCampaign = Readonly<{
  reduced: ReducedCampaign;
  installed: string;
  /** Why the limit does not apply; null where it does. */
  notComparable: string | null;
}>;

/** @throws RangeError if the requirement names no method: its schema let it through */
export function requiredMethod({ requirements: { impact } }: Project): MethodId {
  const method = matchMethod(impact.method);
  if (method === null || method === "not-stated") throw new RangeError(`no test method ${impact.method}`);
  return method;
}

export const limitOf = ({ requirements: { impact } }: Project): LevelLimit => ({
  limit: impact.limit.value,
  source: impact.limitSource,
  locations: impact.testLocations,
});

/** Campaigns against the limit of the requirements, the oldest first. */
export function readCampaigns(project: Project, campaigns: readonly InstalledCampaign[]): readonly ReadCampaign[] {
  const wanted = requiredMethod(project);
  return campaigns
    .toSorted((one, other) => one.date.localeCompare(other.date) || one.id.localeCompare(other.id))
    .map((campaign) => {
      const compares = comparability("g-max", wanted, campaign.method);
      return {
        reduced: reducedCampaign(campaign, limitOf(project), { repeatability: null, equipment: null }),
        installed: campaign.installed,
        notComparable: compares.kind === "comparable" ? null : compares.reason,
      };
    });
}
