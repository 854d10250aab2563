import type { ExactQuantity } from "#lib/quantity";
import type { LinkId } from "./link-ids";
import type { CountedIn, PriceLine, PriceLineKind, PriceTerms } from "./model";
import type { StatedUncertainty } from "./uncertainty/stated-model";

/** One thing that the finished work has to hold. */
export type ScopeItem = Readonly<{ id: string; label: string }>;

/** How a bid stands to one item of scope. */
export type ScopeStanding = "included" | "excluded" | "unclear" | "by-owner" | "not-asked";

/** An amount with its schedule of payment, without the head of a price line. */
export type PlainPrice = {
  [K in Exclude<PriceLineKind, "replacement-chain">]: Readonly<{ kind: K }> & Readonly<Omit<PriceTerms[K], "category">>;
}[Exclude<PriceLineKind, "replacement-chain">];

/** What stands in for a price that a bid does not give. */
export type Plug = Readonly<
  /** Nothing yet: the levelled cost is then at least what it says. */
  | { kind: "none" }
  /** The owner's own figure. */
  | { kind: "figure"; price: PlainPrice }
  /** The median of what the other bids charge for the item; of their unit prices where they price it by unit. */
  | { kind: "median"; quantity: ExactQuantity<CountedIn> | null }
  /** A question to the bidder, which counts as nothing and keeps the levelled cost open. */
  | { kind: "question"; asked: string }
>;

/** What was found out about one item in one bid. `line` is the price line of the bid that holds it, or empty. */
export type ScopeEntry = Readonly<{
  bid: string;
  item: string;
  standing: ScopeStanding;
  document: string;
  page: string;
  line: string;
  plug: Plug;
  note: string;
}>;

/** What technical links compute with; null where the owner has not said and no rule of thumb is offered. */
export type LinkParameters = Readonly<{
  payload: ExactQuantity<"mass">;
  freightPerLoad: ExactQuantity<"money"> | null;
  displacementShare: ExactQuantity<"fraction">;
  carryOffShare: ExactQuantity<"fraction">;
  topUpPrice: ExactQuantity<"moneyPerMass"> | null;
  carpetMass: ExactQuantity<"arealDensity"> | null;
  tippingFee: ExactQuantity<"moneyPerMass"> | null;
  haul: ExactQuantity<"moneyPerMass"> | null;
  recyclingCredit: ExactQuantity<"moneyPerMass"> | null;
  groomingShareHeavy: ExactQuantity<"fraction">;
  groomingShareOther: ExactQuantity<"fraction">;
  wage: ExactQuantity<"moneyPerTime"> | null;
  testVisitPrice: ExactQuantity<"money"> | null;
  testVisitsPerYear: ExactQuantity<"count">;
  locationsPerVisit: ExactQuantity<"count"> | null;
  shockLayerLives: ExactQuantity<"count"> | null;
  coolingDepth: ExactQuantity<"length"> | null;
  coolingsPerYear: ExactQuantity<"count"> | null;
  waterPrice: ExactQuantity<"moneyPerVolume"> | null;
}>;

export type LinkParameter = keyof LinkParameters;

/** How one link is set for one bid. What is not listed is off. */
export type LinkSetting = Readonly<{
  bid: string;
  link: LinkId;
  choice: Readonly<{ kind: "off" } | { kind: "computed" } | { kind: "stated"; price: PlainPrice }>;
  /** Parameters that this bid has other than the rest. */
  own: Readonly<{ [P in LinkParameter]?: LinkParameters[P] | undefined }>;
}>;

/** What a field is compared with that no bidder offers, as the owner describes it: natural grass, or doing nothing. */
export type BaseAlternative = Readonly<{
  label: string;
  hoursPerYear: ExactQuantity<"yearlyUse"> | null;
  prices: readonly PriceLine[];
}>;

/** What the life-cycle measures hold each bid against. */
export type ComparedWith = Readonly<{ kind: "nothing" } | { kind: "base-alternative" } | { kind: "bid"; bid: string }>;

/** The owner's side of the money. */
export type Costing = Readonly<{
  checklist: readonly ScopeItem[];
  levelling: readonly ScopeEntry[];
  linkParameters: LinkParameters;
  links: readonly LinkSetting[];
  baseAlternative: BaseAlternative | null;
  comparedWith: ComparedWith;
  /** What is not known for certain in the costs. */
  uncertainty: StatedUncertainty;
}>;
