import { type Campaign, type CampaignInput, campaignSchema, type Drops, type LevelLimit } from "#lib/fieldtest";
import { type In, measured, type UnitOf } from "#lib/quantity";

export const grams = (level: number): In<"g"> => measured("impactLevel", level);
export const metres = (number: number, unit: UnitOf<"distance"> = "m") => measured("distance", number, unit);
export const at = (x: number, y: number) => ({ x: metres(x), y: metres(y) });
export const dropsOn = (first: number, second: number, third: number): Drops => [
  grams(first),
  grams(second),
  grams(third),
];

export const below200: LevelLimit = { limit: grams(200), source: "the contract, clause 7", locations: 8 };
export const nothingKnown = { repeatability: null, equipment: null } as const;

type Row = readonly [first: string, second: string, third: string];

/** A campaign as filed, with locations of the given drops. */
export const campaignInput = (rows: readonly Row[], about: Partial<CampaignInput> = {}): CampaignInput => ({
  id: "yearly-3",
  kind: "yearly",
  date: "2029-05-14",
  laboratory: "County materials laboratory",
  operator: "the site team",
  equipment: "missile A, no. 4",
  calibrated: "2029-02-01",
  weather: { air: "68 °F", surface: "84 °F", moisture: "dry", description: "clear" },
  method: "ASTM F1936",
  edition: "F1936-19",
  origin: "south-west corner of the turf",
  locations: rows.map((drops, index) => ({
    id: `location-${index + 1}`,
    label: `Location ${index + 1}`,
    x: `${index * 10} m`,
    y: "20 m",
    drops: [...drops] as [string, string, string],
    note: "",
  })),
  depths: [],
  note: "",
  ...about,
});

export const campaignOf = (rows: readonly Row[], about: Partial<CampaignInput> = {}): Campaign =>
  campaignSchema.parse(campaignInput(rows, about));

/** Eight locations that scatter little. */
export const eightLocations: readonly Row[] = [
  ["118", "131", "135"],
  ["120", "128", "131"],
  ["122", "133", "134"],
  ["117", "126", "132"],
  ["119", "130", "130"],
  ["121", "131", "134"],
  ["118", "127", "130"],
  ["123", "134", "138"],
];
