import type { ProjectFile } from "#lib/evaluation";
import { bidLines, conventionsText, workedTerms } from "../checks/cost-example";
import { workedTexts } from "../criteria/worked-score";

type BidInFile = ProjectFile["bids"][number];
type Letter = keyof typeof workedTerms;

/** What the measures of the worked score are called in the house. */
const measureNames: Readonly<Record<string, string>> = {
  impact: "impact-level-as-new",
  fall: "critical-fall-height.f1292",
  heat: "surface-temperature-rise.surface-thermometer",
  cost: "annual-cost-per-area",
  warranty: "warranty-years",
};

const claim = (property: string, figure: string, method = "not-stated") => ({
  id: property,
  property,
  figure,
  method,
  condition: "new",
  evidence: "accredited-laboratory",
});

/** A bid of the worked example: level in g, fall height in m, temperature rise in K, warranty in years. */
const bid = (letter: Letter, level: number, fall: number, heat: number, warranty: number): BidInFile => ({
  id: `bid-${letter}`,
  letter: letter.toUpperCase(),
  bidder: `Bidder ${letter.toUpperCase()}`,
  system: "Invented",
  infill: { placement: "layered", components: [] },
  claims: [
    claim("g-max", `${level} g`, "f355-a"),
    claim("critical-fall-height", `${fall} m`, "f1292"),
    claim("surface-temperature-rise", `${heat} K`, "surface-thermometer"),
    claim("warranty-years", `${warranty} years`),
  ],
  prices: bidLines(workedTerms[letter]) as BidInFile["prices"],
});

/** The invented comparison of three bids, with prices and scores, as a project file. */
export const workedProject: ProjectFile = {
  format: "evenfield-project",
  version: 1,
  brief: {
    name: "Worked example",
    owner: "Nobody",
    purpose: "",
    notice: "Invented",
    field: { kind: "measured-area", area: "80,000 ft²", how: "given" },
    use: { hoursPerYear: "1,800 h/year", description: "" },
    climate: { description: "", hottestSummerAir: "", frost: "not-stated" },
    money: conventionsText,
    ownMaterials: [],
  },
  requirements: {
    impact: {
      method: "f355-a",
      targetWindow: { low: "90 g", high: "115 g" },
      limit: "200 g",
      limitSource: "ASTM F1936",
      testLocations: "8",
      horizonYears: "8 years",
      ownersDrift: { low: "1 g/year", likely: "3 g/year", high: "6 g/year" },
      chanceLevel: "95 %",
      depthSensitivity: { kind: "common-practice" },
    },
    criteria: workedTexts.map((text) => ({ ...text, measure: measureNames[text.measure] ?? text.measure })),
  },
  bids: [bid("a", 128, 1.1, 32, 8), bid("b", 104, 1.4, 30, 10), bid("c", 112, 1.3, 18, 8)],
};

/** A component of an infill as text. */
export const component = (id: string, material: string, arealDensity: string) => ({
  id,
  material,
  arealDensity,
  bulkDensity: "",
  evidence: "stated",
  document: "",
  page: "",
  words: "",
});
