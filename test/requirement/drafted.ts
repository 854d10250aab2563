import { readFileSync } from "node:fs";
import { projectFileSchema } from "#lib/evaluation";
import {
  type ClausesText,
  clausesSchema,
  type DraftingInput,
  draftSection,
  numberedSection,
  requirementsOf,
  startingSpecification,
} from "#lib/requirement";
import { subjects } from "./clauses";

const { brief, requirements } = projectFileSchema.parse(
  JSON.parse(readFileSync("app/_demo/demonstration-project.json", "utf8")),
);

/** Clauses beside the criteria of the demonstration project, and a few of their own. */
const demonstrationClauses: ClausesText = [
  {
    id: "impact-new-clause",
    criterion: "impact-new",
    edition: "current edition",
    condition: "new",
    holdsAt: "each-point",
    acceptance: "the laboratory tests the finished field before the public uses it",
    laterTests: "1 year",
    remedy: "even out or top up the infill and test again within 20 days; replace what still misses the limit",
    limitSource: "owner’s contract limit, stricter than the 200 g of ASTM F1936",
    submittals: ["test-report"],
  },
  {
    id: "infiltration-clause",
    criterion: "infiltration",
    edition: "current edition",
    holdsAt: "each-point",
    acceptance: "flood tests at three places of the finished field",
    remedy: "open the drainage or replace the layer that holds the water, and test again within 30 days",
    submittals: ["test-report"],
  },
  { id: "warranty-clause", criterion: "warranty", submittals: ["warranty-form"] },
  {
    id: "tuft-bind",
    label: "Tuft bind",
    reason: "Tufts that come out leave bare strips and set fibre loose.",
    measure: "tuft-bind.d1335",
    limit: { kind: "at-least", limit: "8 lbf" },
    evidence: "accredited-laboratory",
    edition: "current edition",
    condition: "new",
    holdsAt: "average",
    acceptance: "none beyond the report, since the test destroys the sample",
    remedy: "carpet of that production run is replaced",
    submittals: ["test-report", "sample"],
  },
  {
    id: "lead",
    label: "Lead in fibre",
    reason: "Children touch the fibre, and lead harms them at low doses.",
    measure: "lead-content.f2765",
    limit: { kind: "at-most", limit: "100 mg/kg" },
    evidence: "accredited-laboratory",
    edition: "current edition",
    holdsAt: "whole",
    acceptance: "the Owner may have a sample from the site tested",
    remedy: "the carpet is not placed, or is taken up",
    submittals: ["test-report"],
  },
];

/** What the demonstration project's section is drafted from. */
export const demonstrationInput = (change: Partial<DraftingInput> = {}): DraftingInput => ({
  number: startingSpecification.number,
  related: startingSpecification.related,
  facts: {
    project: brief.name,
    owner: brief.owner,
    field: "380 by 212 ft, 80,560 ft²",
    hoursOfUse: brief.use.hoursPerYear.asEntered,
    climate: brief.climate.description,
    studyPeriod: `${brief.money.studyPeriod.years} years`,
    discountRate: `${brief.money.realRate.asEntered} a year over general inflation`,
    baseDate: brief.money.baseDate,
    costTiming: "costs fall at the end of their year",
    testPoints: "10",
    outlook: "worked out for year 8 from the levels that the bid states",
  },
  requirements: requirementsOf(requirements.criteria, clausesSchema(subjects).parse(demonstrationClauses), {
    "impact-level-as-new": "f1936",
  }),
  submittals: [{ id: "sieve", item: "Sieve analysis of each infill", kind: "test-report", usedBy: ["tuft-bind"] }],
  choices: {},
  filledIn: {},
  ...change,
});

export const drafted = (change: Partial<DraftingInput> = {}) =>
  numberedSection(draftSection(demonstrationInput(change)));
