import type { Attachment } from "#lib/attachment";
import type { Claim, ClaimsReading, EvidenceLevel, Provenance } from "#lib/claim";
import type { Committee } from "#lib/committee";
import type { AlternativeCost, BidCost, CostConventions, Costing, MoneyFinding, PriceLine } from "#lib/cost";
import type {
  BidScore,
  Criterion,
  Heading,
  PersonsWeights,
  Ranking,
  WeightMethod,
  WeightStability,
} from "#lib/criteria";
import type { Answer, Finding } from "#lib/crosscheck";
import type { Climate, FieldShape, UseProfile } from "#lib/field";
import type { Figure } from "#lib/figure";
import type {
  AgedLevel,
  DepthMargin,
  HardnessChances,
  HardnessOutlook,
  ImpactRequirement,
  Sensitivity,
} from "#lib/impact";
import type { CrossSection, Placement, WeightClass } from "#lib/infill";
import type { GrainShape, GrainSize, InfillMaterial } from "#lib/material";
import type { Person } from "#lib/people";
import type { Procedure } from "#lib/procedure";
import type { ExactQuantity, PlainDate, Quantity } from "#lib/quantity";
import type { AskedSubmittal, Clause, Specification } from "#lib/requirement";
import type { Distribution } from "#lib/sampling";
import type { Contract, Delivery, RegisterItem } from "#lib/submittal";
import type { EvidencedFigure } from "./claimed-figure";
import type { InstalledCampaign } from "./latest-depth-grid";

/** What is to be built and how money over time is counted, before any bid. */
export type Brief = Readonly<{
  name: string;
  owner: string;
  purpose: string;
  /** A line that stands on every page, such as that all is invented. Empty for a real project. */
  notice: string;
  field: FieldShape;
  use: UseProfile;
  climate: Climate;
  money: CostConventions;
  ownMaterials: readonly InfillMaterial[];
}>;

/** What every bid must meet and what counts for how much. */
export type Requirements = Readonly<{
  impact: ImpactRequirement;
  /** Each with the weight that counts, by whichever method it came about. */
  criteria: readonly Criterion[];
  /** Headings that criteria are weighed under, in the order in which they are read. */
  headings: readonly Heading[];
  /** How the owner gives weights, with the judgements behind them. */
  weighing: WeightMethod;
  /** Each person's own weights where several give them; their mean is what counts. */
  peoplesWeights: readonly PersonsWeights[];
  /** What the specification adds to criteria, or asks for by itself. */
  clauses: readonly Clause[];
  /** What is to be handed in beyond what clauses ask for. */
  submittals: readonly AskedSubmittal[];
}>;

/** One component of the infill as claimed. The material is an id until the catalogue is asked. */
export type InfillClaim = Provenance &
  Readonly<{
    id: string;
    material: string;
    arealDensity: Quantity<"arealDensity">;
    bulkDensity: Quantity<"bulkDensity"> | null;
    particleSize: GrainSize | null;
    shape: GrainShape;
  }>;

/** One bid as written. People tell bids apart by the letter. */
export type Bid = Readonly<{
  id: string;
  letter: string;
  bidder: string;
  /** The kind of surface in neutral words: "layered sand and rubber, no shock layer". */
  system: string;
  infill: Readonly<{ placement: Placement; components: readonly InfillClaim[] }>;
  claims: readonly Claim[];
  prices: readonly PriceLine[];
  /** The sum that the bid form states, in figures; null where it states none. */
  statedTotal: ExactQuantity<"money"> | null;
  /** The same sum in the words of the form; empty where it has none. */
  statedTotalInWords: string;
  /** What the bidder answered to questions, and what claims said before. */
  answers: readonly Answer[];
}>;

export type Project = Readonly<{
  brief: Brief;
  requirements: Requirements;
  bids: readonly Bid[];
  /** The owner's side of the money: levelling, links and what the bids are compared with. */
  costing: Costing;
  /** Tests on the finished field; absent where none are at hand. */
  campaigns?: readonly InstalledCampaign[];
  /** Papers that are kept with the project; absent where there are none. */
  attachments?: readonly KeptAttachment[];
  /** What the owner decided about the section; absent where all is as usual. */
  specification?: Specification;
  /** Who does what; absent where nobody is listed. */
  people?: readonly Person[];
  /** How far the project has come and what was amended; absent in a draft. */
  procedure?: Procedure;
  /** What evaluators handed in and agreed on, as far as it is open; absent where nobody has scored. */
  committee?: Committee;
  /** What holds after the award; absent where all is as usual. */
  contract?: Contract;
  /** What has to be handed in and what came; absent where no register was made. */
  submittals?: readonly RegisterItem[];
  /** What was delivered and how it was placed; absent where nothing is recorded. */
  delivery?: Delivery;
  /** Requests to deliver something else than what was bid; absent where there is none. */
  substitutions?: readonly Substitution[];
}>;

/** A request to deliver something else than what was bid, with what it claims. */
export type Substitution = Readonly<{
  id: string;
  item: string;
  requested: PlainDate | null;
  reason: string;
  /** What the substitute claims: each stands in place of all that the bid says of its property. */
  claims: readonly Claim[];
  /** Infill in place of the bid’s; without a component the bid’s stays. */
  infill: Bid["infill"];
  /** What it costs more, or less where it is a credit; null where the price stays. */
  priceChange: PriceLine | null;
  decision: "" | "accepted" | "rejected";
  decided: PlainDate | null;
  note: string;
}>;

/** A paper that is kept, by its id. */
export type KeptAttachment = Attachment & Readonly<{ id: string }>;

/** What the infill of a bid amounts to. */
export type InfillFigures = Readonly<{
  totalArealDensity: Figure<"arealDensity">;
  stabilisingMass: Figure<"mass">;
  weightClass: WeightClass;
  mineralShare: Figure<"fraction">;
  depth: Figure<"length">;
  freePile: Figure<"length">;
  fillRatio: Figure<"fraction">;
  submergedMass: Figure<"arealDensity">;
  floatProneShare: Figure<"fraction">;
  truckLoads: Figure<"count">;
  components: readonly Readonly<{
    id: string;
    label: string;
    mass: Figure<"mass">;
    submerged: Figure<"arealDensity">;
  }>[];
  crossSection: CrossSection;
  /** Materials that neither the catalogue nor the brief describes; while there is one, the figures are unknown. */
  unknownMaterials: readonly string[];
}>;

/** How hard the surface of a bid is and may become, by the method of the requirement. */
export type HardnessFigures = Readonly<{
  asNew: Figure<"impactLevel">;
  asNewEvidence: EvidenceLevel;
  /** How the level as new scatters where the bid says more than its ends. */
  asNewSpread: Distribution | null;
  /** The level at the hardest point as new, with what shows it. */
  worstPoint: EvidencedFigure;
  /** The bid's own levels with their ages, the new one included, as far as the method compares. */
  stated: readonly AgedLevel[];
  outlook: HardnessOutlook;
  /** What the outlook rests on and when it leaves the owner's limits, in sentences. */
  sentences: readonly string[];
  atHorizon: Figure<"impactLevel">;
  atHorizonEvidence: EvidenceLevel;
  sensitivity: Sensitivity;
  /** What the bid's own levels at lesser infill depths show; null where it gives none. */
  ownSensitivity: Figure<"depthSensitivity"> | null;
  depthMargin: DepthMargin;
  /** Depth that may gather on a spot before it is softer than the owner's target window. */
  softMargin: DepthMargin;
  /** Chances year by year and the first year below the owner's level; `whatMovesIt` of its question ranks the inputs. */
  chances: HardnessChances;
  chanceSentences: readonly string[];
}>;

/** Everything that can be said of one bid, each figure with its working. */
export type BidEvaluation = Readonly<{
  id: string;
  letter: string;
  bidder: string;
  system: string;
  reading: ClaimsReading;
  infill: InfillFigures;
  hardness: HardnessFigures;
  /** Levelled, with what was added and what does not count. */
  cost: BidCost;
  findings: readonly Finding[];
  /** What the bid form’s own figures do not agree on, and prices that stand out beside the other bids. */
  priceFindings: readonly MoneyFinding[];
  /** What the committee made of it, by id of the criterion: a share of full worth. */
  ratings: Readonly<Record<string, Figure<"fraction">>>;
  answers: readonly Answer[];
  score: BidScore;
}>;

/** The outcome of the whole job as plain data: pages, documents and scripts read the same. */
export type Evaluation = Readonly<{
  format: "evenfield-evaluation";
  version: 1;
  project: Readonly<{ name: string; owner: string; notice: string }>;
  area: Figure<"area">;
  bids: readonly BidEvaluation[];
  ranking: Ranking;
  /** How far each weight can move before another bid leads; null with fewer than two bids that can lead. */
  stability: WeightStability | null;
  /** What the owner’s own alternative costs, natural grass for example; null where none is described. */
  baseAlternative: AlternativeCost | null;
  /** How far the project has come, and what was amended since its criteria were frozen. */
  procedure: Procedure;
  cautions: readonly string[];
}>;
