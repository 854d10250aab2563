import { describe, expect, test } from "vitest";
import { type CampaignInput, campaignSchema } from "#lib/fieldtest";
import { campaignInput, eightLocations } from "./campaigns";

const problemsOf = (input: CampaignInput) =>
  campaignSchema.safeParse(input).error?.issues.map(({ path, message }) => `${path.join(".")}: ${message}`) ?? [];
const first = (rows: CampaignInput["locations"]) => {
  const [location] = rows;
  if (location === undefined) throw new Error("no location");
  return location;
};

describe("campaignSchema", () => {
  const input = campaignInput(eightLocations);

  test("keeps every text as entered beside what it says", () => {
    const campaign = campaignSchema.parse({
      ...input,
      depths: [{ id: "d1", x: "-3 ft", y: "12 yd", depth: "1-1/4 in" }],
    });
    expect(campaign.weather.surface).toMatchObject({ asEntered: "84 °F" });
    expect(campaign.depths[0]).toMatchObject({
      x: { asEntered: "-3 ft", value: -0.9144000000000001 },
      depth: { asEntered: "1-1/4 in", value: 0.03175 },
    });
    expect(campaign.method).toBe("f1936");
  });

  test("takes drops, weather and positions that nobody noted", () => {
    const location = { ...first(input.locations), x: "", y: "", drops: ["120", "", ""] as [string, string, string] };
    const campaign = campaignSchema.parse({ ...input, weather: {}, calibrated: "", locations: [location] });
    expect(campaign.locations[0]).toMatchObject({ x: null, y: null, drops: [{ value: 120 }, null, null] });
    expect(campaign.weather).toEqual({ air: null, surface: null, moisture: "not-stated", description: "" });
  });

  test.each<readonly [what: string, input: CampaignInput, problem: string]>([
    [
      "a method that is not known",
      { ...input, method: "jumping" },
      "method: “jumping” is not a test method in the register. Expected one of it, for instance ASTM F1936.",
    ],
    [
      "no method",
      { ...input, method: "" },
      "method: Name the test method, for instance ASTM F1936: levels by different methods can't be compared.",
    ],
    [
      "a calibration after the test",
      { ...input, calibrated: "2029-06-01" },
      "calibrated: The equipment was calibrated on 2029-06-01, after the test on 2029-05-14. Expected the calibration that was in force on that day.",
    ],
    [
      "half a position",
      { ...input, locations: [{ ...first(input.locations), y: "" }] },
      "locations.0.y: Only one of the two coordinates is given. Expected both or none.",
    ],
    [
      "an id that stands twice",
      { ...input, locations: [first(input.locations), first(input.locations)] },
      "locations.1.id: The id “location-1” stands twice. Expected one of its own.",
    ],
    [
      "a drop in another unit",
      { ...input, locations: [{ ...first(input.locations), drops: ["120 mm", "", ""] }] },
      "locations.0.drops.0: “mm” is a unit of length or distance. Expected impact level, for instance in g.",
    ],
  ])("names the place of %s", (_, wanting, problem) => expect(problemsOf(wanting)).toContain(problem));
});
