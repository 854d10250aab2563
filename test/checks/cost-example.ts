/** Conventions of the worked example as text: 20 years at 3 % real, end of year. */
export const conventionsText = {
  currency: "USD",
  baseDate: "2026-07-01",
  studyPeriod: "20 years",
  realRate: "3 %",
  timing: "end-of-year",
  money: "constant",
} as const;

/** What differs between the three invented bids for a field of 80,000 ft². */
export type BidTerms = Readonly<{
  carpet: string;
  base: string;
  pad: string;
  additions: readonly (readonly [id: string, label: string, price: string])[];
  grooming: string;
  wage: string;
  topUp: string;
  topUpPrice: string;
  water: string;
  repairs: string;
  repairGrowth: string;
  deepClean: string;
  renewalSaving: string;
  removal: string;
  life: string;
}>;

const perArea = (price: string) => ({ kind: "per-area", price }) as const;
const lumpSum = (price: string) => ({ kind: "lump-sum", price }) as const;
const perUnit = (quantity: string, unitPrice: string) => ({ kind: "per-unit", quantity, unitPrice }) as const;

/** A bid of the worked example as text, the way a form or a file holds it. */
export function bidLines(terms: BidTerms) {
  const upkeep = { kind: "yearly", category: "operation-and-maintenance", givenBy: "owner-estimate" } as const;
  const part = { kind: "replacement-chain", givenBy: "bid", lifeGivenBy: "owner-estimate" } as const;
  return [
    {
      ...part,
      id: "carpet",
      label: "Carpet and infill",
      amount: perArea(terms.carpet),
      life: terms.life,
      renewalSaving: terms.renewalSaving,
      removal: perArea(terms.removal),
      removalAtStudyEnd: "used-life-share",
      residual: "straight-line",
    },
    { ...part, id: "base", label: "Base and drainage", amount: perArea(terms.base), life: "30 years" },
    { ...part, id: "pad", label: "Shock pad", amount: perArea(terms.pad), life: "20 years" },
    ...terms.additions.map(([id, label, price]) => ({
      kind: "at-base-date",
      id,
      label,
      category: "owners-addition",
      givenBy: "owner-estimate",
      amount: lumpSum(price),
    })),
    { ...upkeep, id: "grooming", label: "Grooming labour", amount: perUnit(terms.grooming, terms.wage) },
    { ...upkeep, id: "top-up", label: "Infill top-up", amount: perUnit(terms.topUp, terms.topUpPrice) },
    { ...upkeep, id: "water", label: "Water", amount: perUnit(terms.water, "$9/kgal") },
    { ...upkeep, id: "impact-test", label: "Impact test", category: "testing", amount: lumpSum("$1,150") },
    { ...upkeep, id: "repairs", label: "Repairs", amount: lumpSum(terms.repairs), escalation: terms.repairGrowth },
    {
      ...upkeep,
      kind: "periodic",
      id: "deep-clean",
      label: "Deep clean",
      amount: lumpSum(terms.deepClean),
      every: "2 years",
      until: "18",
      except: "10",
    },
  ];
}

/**
 * Three invented bids for one field: 80,000 ft², 20 years, 3 % real, constant money, end of year, carpets renewed in
 * year 10. What they come to was derived independently of this code from discount factors; method of 10 CFR 436.16,
 * straight-line residual as in US GSA P100.
 */
export const workedTerms = {
  a: {
    carpet: "$4.85/ft²",
    base: "$3.10/ft²",
    pad: "$0/ft²",
    additions: [
      ["groomer", "Grooming machine", "$18,500"],
      ["acceptance-tests", "Acceptance tests", "$4,200"],
    ],
    grooming: "110 h",
    wage: "$48/h",
    topUp: "4,000 lb",
    topUpPrice: "$0.38/lb",
    water: "0 kgal",
    repairs: "$1,500",
    repairGrowth: "2 %",
    deepClean: "$3,200",
    renewalSaving: "0 %",
    removal: "$0.85/ft²",
    life: "10 years",
  },
  b: {
    carpet: "$5.60/ft²",
    base: "$2.95/ft²",
    pad: "$1.35/ft²",
    additions: [],
    grooming: "90 h",
    wage: "$48/h",
    topUp: "2,500 lb",
    topUpPrice: "$0.40/lb",
    water: "0 kgal",
    repairs: "$1,200",
    repairGrowth: "2 %",
    deepClean: "$3,200",
    renewalSaving: "8 %",
    removal: "$0.60/ft²",
    life: "10 years",
  },
  c: {
    carpet: "$6.05/ft²",
    base: "$3.25/ft²",
    pad: "$1.20/ft²",
    additions: [["logos", "Logos", "$6,750"]],
    grooming: "150 h",
    wage: "$48/h",
    topUp: "6,500 lb",
    topUpPrice: "$0.42/lb",
    water: "250 kgal",
    repairs: "$1,200",
    repairGrowth: "2 %",
    deepClean: "$2,400",
    renewalSaving: "",
    removal: "$0.70/ft²",
    life: "10 years",
  },
} as const satisfies Record<string, BidTerms>;
