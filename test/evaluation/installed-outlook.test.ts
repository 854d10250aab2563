import fc from "fast-check";
import jStat from "jstat";
import { describe, expect, test } from "vitest";
import { installedOutlook, projectFileSchema } from "#lib/evaluation";
import { campaignSchema, reducedCampaign } from "#lib/fieldtest";
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
