import type { CostCategory, PriceLineKind } from "#lib/cost";
import type { BidText } from "#lib/evaluation";

export type PriceLineText = BidText["prices"][number];
type TextOf<K extends PriceLineKind> = Extract<PriceLineText, { kind: K }>;

const head = (id: string) =>
  ({
    id,
    label: "",
    givenBy: "bid",
    document: "",
    page: "",
    note: "",
    amount: { kind: "lump-sum", price: "" },
  }) as const;
const upkeep: CostCategory = "operation-and-maintenance";

/** What each kind of line is for, and the line before anything is entered. */
export const priceKinds: {
  readonly [K in PriceLineKind]: Readonly<{ explanation: string; blank: (id: string) => TextOf<K> }>;
} = {
  "replacement-chain": {
    explanation:
      "For what wears out before the study ends: carpet, infill, shock layer. It is bought, taken out and bought again each time its life is over.",
    blank: (id) => ({
      kind: "replacement-chain",
      ...head(id),
      life: "",
      lifeGivenBy: "bid",
      renewalSaving: "",
      removal: null,
      removalGivenBy: "owner-estimate",
      removalAtStudyEnd: "used-life-share",
      residual: "straight-line",
      escalation: "",
    }),
  },
  "at-base-date": {
    explanation: "For what is paid one time when the field is built, and for what the owner has to add to the bid.",
    blank: (id) => ({ kind: "at-base-date", ...head(id), category: "investment" }),
  },
  yearly: {
    explanation: "For what comes every year: grooming, infill top-up, repairs, yearly tests.",
    blank: (id) => ({ kind: "yearly", ...head(id), category: upkeep, from: "", to: "", escalation: "" }),
  },
  periodic: {
    explanation: "For what comes every few years: deep cleaning, de-compaction, seam work.",
    blank: (id) => ({
      kind: "periodic",
      ...head(id),
      category: upkeep,
      every: "",
      from: "",
      until: "",
      except: "",
      escalation: "",
    }),
  },
  "in-year": {
    explanation: "For one payment in a later year that is known already.",
    blank: (id) => ({ kind: "in-year", ...head(id), category: upkeep, year: "", escalation: "" }),
  },
};
