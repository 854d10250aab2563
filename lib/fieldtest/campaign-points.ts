import type { MethodId } from "#lib/claim";
import { type In, measured, type PlainDate } from "#lib/quantity";
import { locationLevel } from "./location-level";
import type { ReducedCampaign } from "./reduced-campaign";
import { yearsBetween } from "./years-between";

/** What a campaign says of the installed field at its age, for the outlook. */
export type CampaignPoint = Readonly<{
  campaign: string;
  date: PlainDate;
  method: MethodId;
  /** Since the acceptance test, or since the first campaign where there was none. */
  years: number;
  mean: In<"g">;
  /** The highest level of all locations. */
  worst: In<"g">;
  locations: number;
}>;

/** The day from which the age of the field counts: its acceptance test, else its first campaign; null without one. */
export function ageCountsFrom(campaigns: readonly ReducedCampaign[]): PlainDate | null {
  const dates = (of: readonly ReducedCampaign[]) => of.map(({ campaign }) => campaign.date).toSorted();
  const accepted = dates(campaigns.filter(({ campaign }) => campaign.kind === "acceptance"));
  return accepted[0] ?? dates(campaigns)[0] ?? null;
}

/** Campaigns with a level as aged points, the oldest first. */
export function campaignPoints(campaigns: readonly ReducedCampaign[]): readonly CampaignPoint[] {
  const start = ageCountsFrom(campaigns);
  if (start === null) return [];
  return campaigns
    .flatMap(({ campaign, locations }): readonly CampaignPoint[] => {
      const levels = locations.flatMap(({ drops }) => (drops === null ? [] : [locationLevel(drops)]));
      if (levels.length === 0) return [];
      const sum = levels.toSorted((a, b) => a - b).reduce((total, level) => total + level, 0);
      return [
        {
          campaign: campaign.id,
          date: campaign.date,
          method: campaign.method,
          years: yearsBetween(start, campaign.date),
          mean: measured("impactLevel", sum / levels.length),
          worst: measured("impactLevel", Math.max(...levels)),
          locations: levels.length,
        },
      ];
    })
    .toSorted((one, other) => one.date.localeCompare(other.date) || one.campaign.localeCompare(other.campaign));
}
