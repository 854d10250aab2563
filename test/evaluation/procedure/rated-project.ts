import type { SheetText } from "#lib/committee";
import { type PricesText, type ProjectFile, projectFileSchema } from "#lib/evaluation";
import demonstration from "../../../app/_demo/demonstration-project.json" with { type: "json" };

/** Five levels from nothing to all, in even steps. */
const levels = ["Not covered", "In part", "Covered", "Shown", "Proven"].map((label, at) => ({
  ...{ id: `level-${at + 1}`, label, description: `Everything that “${label.toLowerCase()}” takes is there.` },
  value: String(at / 4),
}));

const rated = (id: string, label: string): ProjectFile["requirements"]["criteria"][number] => ({
  ...{ id, label, measure: "evaluators-rating", weight: "10" },
  reason: "Nobody can measure it, and the owner still has to judge it.",
  gate: { kind: "none" },
  valueFunction: { kind: "rating", levels },
  evidence: { least: "stated", shortfall: "counts-as-worst" },
});

/** What two criteria ask of people. */
export const ratedCriteria = [rated("care-plan", "Plan for care"), rated("references", "References of like fields")];

// in a JSON file a list may have any length, where the format has three drops
const demo = demonstration as unknown as ProjectFile;

/** The demonstration project with two criteria that people rate, and with bids that have yet to name a price. */
export const ratedFile: ProjectFile = {
  ...demo,
  brief: { ...demo.brief, name: "North field" },
  requirements: { ...demo.requirements, criteria: [...demo.requirements.criteria, ...ratedCriteria] },
  bids: demo.bids.map((bid) => ({ ...bid, prices: [], statedTotal: "", statedTotalInWords: "" })),
};

export const ratedProject = projectFileSchema.parse(ratedFile);

/** Four people: one who runs the procedure, and three who score. */
export const committeePeople = [
  { id: "dana-ruiz", name: "Dana Ruiz", position: "facilities director", roles: ["administrator" as const] },
  { id: "eve-okoro", name: "Eve Okoro", position: "athletic director", roles: ["evaluator" as const] },
  { id: "sam-lind", name: "Sam Lind", position: "head groundskeeper", roles: ["evaluator" as const] },
  { id: "kim-vale", name: "Kim Vale", position: "principal", roles: ["evaluator" as const] },
];

const { brief, requirements, bids, costing, specification, campaigns = [] } = ratedFile;
const { contract, submittals = [], delivery, substitutions = [] } = ratedFile;

/** The same as a project to be stored, with its people listed. */
export const ratedToStore = {
  ...{ name: brief.name, owner: brief.owner, origin: "own" as const },
  documents: [
    { kind: "brief", body: brief } as const,
    { kind: "requirements", body: requirements } as const,
    ...bids.map(({ id, ...body }) => ({ kind: "bid", id, body }) as const),
    ...campaigns.map(({ id, ...body }) => ({ kind: "campaign", id, body }) as const),
    ...(costing === undefined ? [] : [{ kind: "costing", body: costing } as const]),
    ...(specification === undefined ? [] : [{ kind: "specification", body: specification } as const]),
    ...(contract === undefined ? [] : [{ kind: "contract", body: contract } as const]),
    ...submittals.map(({ id, ...body }) => ({ kind: "submittal", id, body }) as const),
    ...(delivery === undefined ? [] : [{ kind: "delivery", body: delivery } as const]),
    ...substitutions.map(({ id, ...body }) => ({ kind: "substitution", id, body }) as const),
    { kind: "people", body: { people: committeePeople } } as const,
  ],
};

/** One price of an amount, paid at the base date, with a name to look for. */
export const onePrice = (amount: string, label: string): PricesText => ({
  prices: [
    {
      ...{
        kind: "at-base-date",
        id: "works",
        label,
        category: "investment",
        givenBy: "bid",
        document: "",
        page: "",
        note: "",
      },
      amount: { kind: "lump-sum", price: amount },
    },
  ],
  ...{ statedTotal: amount, statedTotalInWords: "" },
});

/** A sheet with one level for every bid on every rated criterion, each with the same comment. */
export const sheetOf = (level: string, comment: string, statement: SheetText["statement"]): SheetText => ({
  statement,
  ratings: ratedCriteria.flatMap(({ id: criterion }) =>
    bids.map(({ id: bid }) => ({ criterion, bid, level, comment })),
  ),
});
