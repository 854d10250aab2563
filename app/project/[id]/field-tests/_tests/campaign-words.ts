import type { CampaignKind } from "#lib/fieldtest";

export const kindWords: Readonly<Record<CampaignKind, string>> = {
  acceptance: "Acceptance test",
  yearly: "Yearly test",
  other: "Other test",
};

/** A date as it reads in a sentence: “June 3, 2027”. */
export const dateInWords = (date: string): string =>
  new Date(`${date}T00:00:00Z`).toLocaleDateString("en-US", { dateStyle: "long", timeZone: "UTC" });
