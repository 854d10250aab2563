import type { PlainDate } from "#lib/quantity";
import type { BidText, ProjectFile } from "./schema";

const noGate = { kind: "none" } as const;

/**
 * What an empty project starts with: a field, conventions and a few criteria, every figure the owner's to change.
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
      criteria: [
        {
          id: "impact-as-new",
          measure: "impact-level-as-new",
          label: "Impact level as new",
          reason: "A field that starts too hard leaves no room for wear.",
          gate: { kind: "below", limit: "200 g" },
          valueFunction: {
            kind: "target-window",
            nothingBelow: "70 g",
            fullFrom: "80 g",
            fullTo: "120 g",
            nothingAbove: "200 g",
          },
          weight: "30",
          evidence: { least: "stated", shortfall: "ask-first" },
        },
        {
          id: "impact-last-year",
          measure: "impact-level-at-horizon",
          label: "Impact level in the last year looked at",
          reason: "Children play on the field in its last year as well.",
          gate: noGate,
          valueFunction: { kind: "less-is-better", best: "120 g", worst: "200 g" },
          weight: "20",
          evidence: { least: "stated", shortfall: "keep-open" },
        },
        {
          id: "infill-mass",
          measure: "infill-mass-per-area",
          label: "Infill mass per area",
          reason: "The infill holds the carpet down and the fibres upright.",
          gate: noGate,
          valueFunction: { kind: "more-is-better", worst: "1 lb/ft²", best: "9 lb/ft²" },
          weight: "15",
          evidence: { least: "stated", shortfall: "keep-open" },
        },
        {
          id: "annual-cost",
          measure: "annual-cost-per-area",
          label: "Equivalent annual cost per area",
          reason: "The owner pays in every year of use, not only on the first day.",
          gate: noGate,
          valueFunction: { kind: "less-is-better", best: "$0.50/ft²", worst: "$2.00/ft²" },
          weight: "25",
          evidence: { least: "stated", shortfall: "keep-open" },
        },
        {
          id: "warranty",
          measure: "warranty-years",
          label: "Warranty",
          reason: "A promise should last as long as the life that the price counts on.",
          gate: noGate,
          valueFunction: { kind: "more-is-better", worst: "5 years", best: "12 years" },
          weight: "10",
          evidence: { least: "stated", shortfall: "keep-open" },
        },
      ],
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
