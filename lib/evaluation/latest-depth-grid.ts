import type { Campaign } from "#lib/fieldtest";
import type { DepthGrid } from "#lib/impact";

/** A campaign with the bid whose system was installed; empty where that is none of the project's. */
export type InstalledCampaign = Campaign & Readonly<{ installed: string }>;

/** The infill depths of the latest campaign that measured any; null without one. */
export function latestDepthGrid(campaigns: readonly Campaign[]): DepthGrid | null {
  const latest = campaigns
    .filter(({ depths }) => depths.length > 0)
    .toSorted((one, other) => one.date.localeCompare(other.date) || one.id.localeCompare(other.id))
    .at(-1);
  return latest === undefined ? null : { date: latest.date, depths: latest.depths.map(({ depth }) => depth.value) };
}
