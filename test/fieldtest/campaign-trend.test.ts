import { describe, expect, test } from "vitest";
import {
  ageCountsFrom,
  campaignPoints,
  campaignTrend,
  type PromisedLevels,
  reducedCampaign,
  statedRepeatability,
  warrantyFacts,
} from "#lib/fieldtest";
import { below200, campaignOf, eightLocations, grams } from "./campaigns";

const known = { repeatability: statedRepeatability(grams(4)), equipment: null } as const;
const on = (id: string, kind: "acceptance" | "yearly", date: string, by: number) =>
  reducedCampaign(
    campaignOf(
      eightLocations.map(([one, two, three]) => [one, `${Number(two) + by}`, `${Number(three) + by}`] as const),
      { id, kind, date, calibrated: "" },
    ),
    below200,
    known,
  );
const campaigns = [on("year-3", "yearly", "2029-05-14", 30), on("new", "acceptance", "2026-05-14", 0)];
const promised: PromisedLevels = { method: "f1936", claimed: grams(120), guaranteed: { level: grams(165), years: 2 } };

describe("campaignPoints", () => {
  test("are the campaigns by age, the oldest first, in whatever order they come", () => {
    expect(campaignPoints(campaigns)).toEqual(campaignPoints(campaigns.toReversed()));
    expect(campaignPoints(campaigns)).toEqual([
      { campaign: "new", date: "2026-05-14", method: "f1936", years: 0, mean: 131.5, worst: 136, locations: 8 },
      expect.objectContaining({ campaign: "year-3", years: expect.closeTo(3, 2), mean: 161.5, worst: 166 }),
    ]);
  });
  test("count from the acceptance, or from the first campaign without one", () => {
    expect(ageCountsFrom(campaigns)).toBe("2026-05-14");
    expect(ageCountsFrom(campaigns.slice(0, 1))).toBe("2029-05-14");
    expect(ageCountsFrom([])).toBeNull();
  });
});

describe("campaignTrend", () => {
  test("reads each campaign against claim and guarantee", () =>
    expect(campaignTrend(campaigns, promised).sentences).toEqual([
      "2026-05-14: mean 132 g, worst of 8 locations 136 g; the mean is 12 g above the 120 g claimed as new; the guarantee of 165 g is kept.",
      "2029-05-14: mean 162 g, worst of 8 locations 166 g; the mean is 42 g above the 120 g claimed as new; the guarantee of 165 g has ended.",
    ]));
  test("says when a guarantee is not kept, and how surely", () => {
    const without = (level: number) =>
      campaignTrend(campaigns.slice(0, 1), {
        ...promised,
        claimed: null,
        guaranteed: { level: grams(level), years: null },
      });
    expect(without(165).points[0]?.guarantee).toBe("does-not-meet-within-uncertainty");
    expect(without(165).sentences[0]).toBe(
      "2029-05-14: mean 162 g, worst of 8 locations 166 g; the guarantee of 165 g is not kept, but within the measuring uncertainty.",
    );
    expect(without(150).points[0]?.guarantee).toBe("does-not-meet");
  });
  test("compares levels by methods that measure alike, though their names differ", () =>
    expect(campaignTrend(campaigns, { ...promised, method: "f355-a" })).toEqual(campaignTrend(campaigns, promised)));
  test("does not compare levels by methods that measure unlike", () => {
    const [point] = campaignTrend(campaigns, { ...promised, method: "f1702-clegg" }).points;
    expect([point?.aboveClaim, point?.guarantee]).toEqual([null, "another-method"]);
  });
});

describe("warrantyFacts", () => {
  const [aged] = campaigns;
  test("state date, method, places, values and clause, and nothing else", () => {
    if (aged === undefined) throw new Error("no campaign");
    const facts = warrantyFacts(aged, {
      where: "contract, section 7.2, page 14",
      words: "No location shall exceed 165 g.",
      limit: grams(165),
    });
    expect(facts.locations.map(({ id, level }) => [id, level])).toEqual([["location-8", 166]]);
    expect(facts.sentences).toEqual([
      "On 2029-05-14 the field was tested by ASTM F1936 (F1936-19) at 8 locations by County materials laboratory and the site team.",
      "Equipment: missile A, no. 4, calibration date not noted.",
      "Conditions: air 68 °F, surface 84 °F and surface dry.",
      "The clause reads: “No location shall exceed 165 g.” (contract, section 7.2, page 14).",
      "1 location was at or above 165.0 g:",
      "Location 8 (x 70 m, y 20 m): drops 123, 164 and 168, level 166.0 g; does not meet, but within the measuring uncertainty.",
      "These are the facts of the test. They say nothing of the cause, and they are no legal advice.",
    ]);
  });
  test("say so where no location is above", () => {
    if (aged === undefined) throw new Error("no campaign");
    const facts = warrantyFacts(aged, { where: "clause 7", words: "Below 200 g.", limit: grams(200) });
    expect(facts.sentences).toContain("No location was at or above 200.0 g.");
  });
});
