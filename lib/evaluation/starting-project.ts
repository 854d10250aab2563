import type { PlainDate } from "#lib/quantity";
import type { BidText, ProjectFile } from "./schema";

/**
 * What an empty project starts with: a field and conventions, every figure the owner's to change. What bids are judged by
 * is chosen first, from a profile or the library.
 * @source impact limit: ASTM F1936 asks for less than 200 g at each point; the rest common practice, no source
 */
export function startingProject(facts: Readonly<{ name: string; owner: string; baseDate: PlainDate }>): ProjectFile {
  return {
    format: "evenfield-project",
    version: 1,
    brief: {
      name: facts.name,
      owner: facts.owner,
      purpose: "",
      notice: "",
      field: { kind: "rectangle", length: "360 ft", width: "160 ft" },
      use: { hoursPerYear: "1,500 h/year", description: "" },
      climate: { description: "", hottestSummerAir: "", frost: "not-stated" },
      money: {
        currency: "USD",
        baseDate: facts.baseDate,
        studyPeriod: "20 years",
        realRate: "3 %",
        timing: "end-of-year",
        money: "constant",
      },
      ownMaterials: [],
    },
    requirements: {
      impact: {
        method: "f1936",
        targetWindow: { low: "80 g", high: "140 g" },
        limit: "200 g",
        limitSource: "ASTM F1936: less than 200 g at each test point",
        testLocations: "10",
        horizonYears: "8 years",
        ownersDrift: { low: "1 g/year", likely: "3 g/year", high: "6 g/year" },
        chanceLevel: "95 %",
        depthSensitivity: { kind: "common-practice" },
      },
      criteria: [],
    },
    bids: [],
  };
}

/** A bid before anything of it is entered. */
export const startingBid = (letter: string, bidder: string): BidText => ({
  letter,
  bidder,
  system: "To be described",
  infill: { placement: "layered", components: [] },
  claims: [],
  prices: [],
});
