import type { ExactQuantity, PlainDate } from "#lib/quantity";
import type { CostCategory } from "./categories";

/** When in a year the costs that recur every year fall. Single payments always fall at the end of their year. */
export type Timing = "end-of-year" | "mid-year";

/** A whole number of years, or the number of a year counted from the base date, beside the text as entered. */
export type Years = Readonly<{ asEntered: string; years: number }>;

/** The rules by which every bid of a project is costed. */
export type CostConventions = Readonly<{
  currency: "USD";
  /** All prices are in money of this day, and all later costs are discounted to it. */
  baseDate: PlainDate;
  studyPeriod: Years;
  /** Over general inflation, per year. Constant money takes a real rate, never a nominal one. */
  realRate: ExactQuantity<"fraction">;
  timing: Timing;
  money: "constant";
}>;

/** What a quantity can be counted in, and the dimension of the unit price that belongs to it. */
export const unitPriceDimensions = {
  mass: "moneyPerMass",
  volume: "moneyPerVolume",
  time: "moneyPerTime",
  area: "moneyPerArea",
  count: "money",
} as const;

export type CountedIn = keyof typeof unitPriceDimensions;
export type UnitPriceDimension = (typeof unitPriceDimensions)[CountedIn];

/** How a price is written. Money is in cents. */
export type Amount = Readonly<
  | { kind: "lump-sum"; price: ExactQuantity<"money"> }
  | { kind: "per-area"; price: ExactQuantity<"moneyPerArea"> }
  | { kind: "per-unit"; quantity: ExactQuantity<CountedIn>; unitPrice: ExactQuantity<UnitPriceDimension> }
>;

/** Growth of a price per year over general inflation; null where the price keeps its value in constant money. */
export type Escalation = ExactQuantity<"fraction"> | null;

/** Who stands behind a figure. An owner's estimate is never shown as the bidder's price. */
export type GivenBy = "bid" | "owner-estimate";

/** What the schedules of payment of the kinds of price line consist of. */
export type PriceTerms = Readonly<{
  /** Paid once, at the base date. A minus sign means a credit. */
  "at-base-date": { category: CostCategory; amount: Amount };
  /** Paid once, at the end of a later year. */
  "in-year": { category: CostCategory; amount: Amount; year: Years; escalation: Escalation };
  /** Paid every year, by default from year 1 to the end of the study. */
  yearly: { category: CostCategory; amount: Amount; from: Years | null; to: Years | null; escalation: Escalation };
  /** Paid every so many years. `until` and `from` are counted; `from` is one interval after the base date by default. */
  periodic: {
    category: CostCategory;
    amount: Amount;
    every: Years;
    from: Years | null;
    until: Years | null;
    except: readonly number[];
    escalation: Escalation;
  };
  /** A part with a life: bought at the base date and renewed each time its life is over, until the study ends. */
  "replacement-chain": {
    amount: Amount;
    life: Years;
    lifeGivenBy: GivenBy;
    /** Share of the first cost that a renewal saves, for example by using the infill again; null for none. */
    renewalSaving: ExactQuantity<"fraction"> | null;
    /** Taking out and disposing of one generation; null where that is priced elsewhere. */
    removal: Amount | null;
    removalGivenBy: GivenBy;
    /** At the end of the study: the share of the life that is used up, the whole, or nothing. */
    removalAtStudyEnd: "used-life-share" | "full" | "none";
    /** At the end of the study: cost × remaining life ÷ life of the last generation, or nothing. */
    residual: "straight-line" | "none";
    escalation: Escalation;
  };
}>;

export type PriceLineKind = keyof PriceTerms;

/** What every price line says about itself. Document and page tell where the figure can be read; empty if nowhere. */
export type PriceLineHead = Readonly<{
  id: string;
  label: string;
  givenBy: GivenBy;
  document: string;
  page: string;
  note: string;
}>;

/** One price of a bid with its schedule of payment. */
export type PriceLine<K extends PriceLineKind = PriceLineKind> = {
  [P in K]: Readonly<{ kind: P }> & PriceLineHead & Readonly<PriceTerms[P]>;
}[K];

/** Cents in constant money at the end of year `index`, not rounded; index 0 is the base date. */
export type CostStream = readonly number[];

/** Which part of a price line a flow is. */
export type CostPart = "price" | "first-cost" | "renewal" | "removal-at-renewal" | "removal-at-study-end" | "residual";

/** Money of one category by year. What recurs every year moves in mid-year timing, what is paid singly does not. */
export type CostFlow = Readonly<{
  part: CostPart;
  givenBy: GivenBy;
  category: CostCategory;
  recurrence: "yearly" | "single";
  stream: CostStream;
}>;
