import type { CurrencyCode, ExactQuantity, In, PlainDate } from "#lib/quantity";
import type { CostCategory } from "./categories";
import type { LinkId } from "./link-ids";

/** When in a year the costs that recur every year fall. Single payments always fall at the end of their year. */
export type Timing = "end-of-year" | "mid-year";

/** A whole number of years, or the number of a year counted from the base date, beside the text as entered. */
export type Years = Readonly<{ asEntered: string; years: number }>;

/** A rate per year for money that is tied up so many years. */
export type TermRate = Readonly<{ years: number; rate: ExactQuantity<"fraction"> }>;

/** Rates by term as a public body prints them, the shortest term first; never empty. */
export type RateTable = Readonly<{ asEntered: string; rates: readonly [TermRate, ...TermRate[]] }>;

/** The rules by which every bid of a project is costed. */
export type CostConventions = Readonly<{
  currency: CurrencyCode;
  /** All prices are in money of this day, and all later costs are discounted to it. */
  baseDate: PlainDate;
  /** Whole years from the base date to the start of use; lives and what recurs are counted from there. */
  serviceStart: Years;
  /** Counted from the base date, the years before service among them. */
  studyPeriod: Years;
  /** Over general inflation, per year; worked out by Fisher's identity from a nominal rate, or read off a table. */
  realRate: ExactQuantity<"fraction">;
  /** The nominal rate as the owner gives it; null where a real rate is given. */
  nominalRate: ExactQuantity<"fraction"> | null;
  /** Published real rates by term from which the rate was read; null where the owner gives a rate. */
  rateTable: RateTable | null;
  /** Which document the rate comes from and of what day; empty where the owner has not said. */
  rateSource: string;
  /** General inflation per year; null only where neither the kind of money nor the rate needs it. */
  inflation: ExactQuantity<"fraction"> | null;
  timing: Timing;
  /** Whether the flows shown keep the money of the base date or carry general inflation. */
  money: "constant" | "current";
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

/** Sums of which a price can be a share. */
export type ShareOf = "base-bid" | "accepted-bid" | "levelled-bid";

/**
 * How a price is written. Money is in cents. The sum that a share is taken of is null until the other prices of the bid
 * are known; `resolvedLines` fills it in.
 */
export type Amount = Readonly<
  | { kind: "lump-sum"; price: ExactQuantity<"money"> }
  | { kind: "per-area"; price: ExactQuantity<"moneyPerArea"> }
  | { kind: "per-unit"; quantity: ExactQuantity<CountedIn>; unitPrice: ExactQuantity<UnitPriceDimension> }
  | { kind: "share"; share: ExactQuantity<"fraction">; of: ShareOf; sum: In<"cent"> | null }
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
    /** A part that stays through several lives of another, as a shock layer under carpets: then `life` is theirs. */
    reuse: Readonly<{ line: string; lives: Years }> | null;
    /** The year of the first renewal where it comes sooner or later than the life says; null for one life of service. */
    firstReplacement: Years | null;
    /** The share of the part that each renewal replaces; null for the whole. */
    replacedShare: ExactQuantity<"fraction"> | null;
    /** Share of the first cost that a renewal saves, for example by using the infill again; null for none. */
    renewalSaving: ExactQuantity<"fraction"> | null;
    /** Taking out and disposing of one generation; null where that is priced elsewhere. */
    removal: Amount | null;
    removalGivenBy: GivenBy;
    /** At the end of the study: the share of the life that is used up, the whole, or nothing. */
    removalAtStudyEnd: "used-life-share" | "full" | "none";
    /** At the end of the study: cost × remaining life ÷ life of the last generation, a sum that is stated, or nothing. */
    residual: "straight-line" | "stated" | "none";
    /** What the part is worth then, in money of the base date; below zero where it costs. Null where it is not stated. */
    statedResidual: ExactQuantity<"money"> | null;
    escalation: Escalation;
  };
}>;

export type PriceLineKind = keyof PriceTerms;

/** What place a price has in a bid, and so whether it counts; the words and rules are in `roles.ts`. */
export type Role = Readonly<
  | { kind: "base-bid" | "allowance" | "bond" | "tax" | "freight" | "owner-furnished" }
  | { kind: "alternate-add" | "alternate-deduct"; accepted: "yes" | "no" }
  | { kind: "unit-price"; acceptedQuantity: ExactQuantity<CountedIn> | null }
  | { kind: "option"; expires: PlainDate; taken: "yes" | "no" }
>;

export type RoleKind = Role["kind"];

/** What a line is spent on where a technical link could price the same; empty where nobody has said. */
export type Purpose = "" | LinkId;

/** What every price line says about itself. Document and page tell where the figure can be read; empty if nowhere. */
export type PriceLineHead = Readonly<{
  id: string;
  label: string;
  givenBy: GivenBy;
  role: Role;
  purpose: Purpose;
  /** What the bid form itself states as the product of quantity and unit price; null where it states none. */
  statedExtension: ExactQuantity<"money"> | null;
  document: string;
  page: string;
  note: string;
}>;

/** One price of a bid with its schedule of payment. */
export type PriceLine<K extends PriceLineKind = PriceLineKind> = {
  [P in K]: Readonly<{ kind: P }> & PriceLineHead & Readonly<PriceTerms[P]>;
}[K];

/** Cents in the money of the conventions at the end of year `index`, not rounded; index 0 is the base date. */
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
