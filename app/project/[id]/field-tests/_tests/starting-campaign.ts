import type { CampaignText } from "#lib/evaluation";
import type { TestPlan } from "#lib/fieldtest";
import { formatValue, type UnitSystem } from "#lib/quantity";

type LocationText = CampaignText["locations"][number];

/** The locations of a plan as a campaign holds them: where each lies, no drop made yet. */
export const plannedLocations = ({ locations }: TestPlan, units: UnitSystem): LocationText[] =>
  locations.map(({ id, label, place }) => ({
    id,
    label,
    x: formatValue("coordinate", place.x, units),
    y: formatValue("coordinate", place.y, units),
    drops: ["", "", ""],
    note: "",
  }));

/** What a campaign starts with. */
export const startingCampaign = (
  facts: Pick<CampaignText, "kind" | "date" | "method" | "locations"> & Readonly<{ installed: string; origin: string }>,
): CampaignText => ({
  ...facts,
  laboratory: "",
  operator: "",
  equipment: "",
  calibrated: "",
  weather: { air: "", surface: "", moisture: "not-stated", description: "" },
  edition: "",
  depths: [],
  note: "",
});
