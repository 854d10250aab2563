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
