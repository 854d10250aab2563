import fc from "fast-check";
import jStat from "jstat";
import { describe, expect, test } from "vitest";
import { installedOutlook, projectFileSchema } from "#lib/evaluation";
import { campaignSchema, reducedCampaign } from "#lib/fieldtest";
import { measured } from "#lib/quantity";
import { workedProject } from "./worked-project";

const { requirements } = projectFileSchema.parse(workedProject);
const { impact } = requirements;
const against = { limit: impact.limit.value, source: "the contract", locations: impact.testLocations };

const campaign = (kind: "acceptance" | "yearly", date: string, levels: readonly number[]) =>
  reducedCampaign(
    campaignSchema.parse({
      ...{ id: `${kind}-${date}`, kind, date, method: impact.method },
      locations: levels.map((level, index) => ({
        id: `location-${index}`,
        drops: [`${level} g`, `${level} g`, `${level} g`],
      })),
    }),
    against,
    { repeatability: null, equipment: null },
  );

const even = [112, 114, 116, 118, 120];

describe("the outlook of the installed field", () => {
  test("is not known without a campaign", () => {
    expect(installedOutlook([], impact).outlook.kind).toBe("unknown");
  });

  test("has in its first year the chance that Φ gives for spots as far apart as measured", () => {
    const { outlook } = installedOutlook([campaign("acceptance", "2027-08-20", even)], impact);
    if (outlook.kind !== "chances") throw new Error("expected chances");
    // standard deviation √10 of 112 … 120 about 116, derived; Φ by jStat, all locations Φⁿ
    const z = Math.log(impact.limit.value / 116) / (Math.sqrt(10) / 116);
    const one = jStat.normal.cdf(z, 0, 1);
    expect(outlook.years[0]?.locations?.locationMeets).toBeCloseTo(one, 8);
    expect(outlook.years[0]?.locations?.allMeet).toBeCloseTo(one ** impact.testLocations, 8);
  });

  test("says nothing of single spots with too few of them", () => {
    const { outlook, assumptions } = installedOutlook([campaign("acceptance", "2027-08-20", even.slice(1))], impact);
    expect(outlook.kind === "chances" && outlook.years[0]?.locations).toBeNull();
    expect(assumptions.join(" ")).toContain("Too few locations were tested on 2027-08-20");
  });

  test("takes the spread from the depths of the latest campaign where the owner says so", () => {
    const wanted = { ...impact, outlook: { installedSpread: "depth-grid" } } as const;
    const perDepth = measured("depthSensitivity", 0.7, "1/in");
    const sensitivity = {
      kind: "applies",
      perDepth: { low: perDepth, likely: perDepth, high: perDepth },
      source: "a test",
      largestLoss: measured("length", 0.75, "in"),
    } as const;
    const tested = campaign("acceptance", "2027-08-20", even);
    const depths = [1.2, 1.4, 1.5, 1.5, 1.6, 1.6, 1.7, 1.9].map((depth, index) => ({
      ...{ id: `depth-${index}`, x: `${index} ft`, y: "0 ft", depth: `${depth} in` },
    }));
    const { depths: read } = campaignSchema.parse({
      ...{ id: "grid", kind: "acceptance", date: "2027-08-20", method: impact.method, locations: [], depths },
    });
    const measuredOn = { ...tested, campaign: { ...tested.campaign, depths: read } };
    const found = installedOutlook([measuredOn], wanted, sensitivity);
    if (found.outlook.kind !== "chances") throw new Error("expected chances");
    // standard deviation 0.20702 in of the eight depths, by hand; × 0.7 per in; Φ by jStat
    const z = Math.log(impact.limit.value / 116) / (0.7 * Math.sqrt(0.3 / 7));
    expect(found.outlook.years[0]?.locations?.locationMeets).toBeCloseTo(jStat.normal.cdf(z, 0, 1), 8);
    expect(found.assumptions.join(" ")).toContain("that grid counts");
    for (const [campaigns, known, sentence] of [
      [[tested], sensitivity, "too few were measured, so the levels count"],
      [[measuredOn], null, "is not known, so the levels count"],
    ] as const) {
      const kept = installedOutlook(campaigns, wanted, known);
      expect(kept.outlook.kind === "chances" && kept.outlook.question.spread.kind).toBe("share");
      expect(kept.assumptions.join(" ")).toContain(sentence);
    }
  });

  test("a harder latest campaign never makes a later year surer", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 1, max: 20 }), (harder, more) => {
        const chancesWith = (by: number) => {
          const yearly = campaign(
            "yearly",
            "2029-08-20",
            even.map((level) => level + by),
          );
          const { outlook } = installedOutlook([campaign("acceptance", "2027-08-20", even), yearly], impact);
          if (outlook.kind !== "chances") throw new Error("expected chances");
          return outlook.years.map(({ decisive }) => decisive);
        };
        const [soft, hard] = [chancesWith(harder), chancesWith(harder + more)];
        for (const [year, chance] of soft.entries())
          if (year >= 2) expect(hard[year]).toBeLessThanOrEqual(chance + 1e-9);
      }),
      { numRuns: 40 },
    );
  });
});
