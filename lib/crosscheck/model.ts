import type { Claim, MethodId } from "#lib/claim";
import type { PriceLine } from "#lib/cost";
import type { Figure, Phrase, Working } from "#lib/figure";
import type { ImpactRequirement } from "#lib/impact";
import type { InfillSystem } from "#lib/infill";
import type { GrainSize, InfillMaterial } from "#lib/material";
import type { In, PlainDate } from "#lib/quantity";

/** How serious a finding is: statements exclude each other, something needs an answer, or it is worth knowing. */
export type Severity = "can't be true" | "needs an answer" | "note";

/** What a bid says of a component of its infill beside mass and density: grain size and its own words. */
export type DescribedComponent = Readonly<{
  id: string;
  material: InfillMaterial;
  particleSize: GrainSize | null;
  words: string;
}>;

/** What the rules look at: one bid with what it amounts to, and the owner's side of it. Nothing else is known to them. */
export type CheckedBid = Readonly<{
  id: string;
  letter: string;
  /** The kind of surface in the words of the bid's description. */
  system: string;
  claims: readonly Claim[];
  /** The components whose material is known; figures over all of them are unknown where one is not. */
  infill: InfillSystem;
  /** The same components as the bid describes them. */
  described: readonly DescribedComponent[];
  prices: readonly PriceLine[];
  totalArealDensity: Figure<"arealDensity">;
  stabilisingMass: Figure<"mass">;
  infillDepth: Figure<"length">;
  mineralShare: Figure<"fraction">;
  floatProneShare: Figure<"fraction">;
  /** The owner's field. */
  area: Figure<"area">;
  hoursPerYear: In<"h/year">;
  /** How long the owner studies the costs, in years. */
  studyYears: number;
  /** The day from which ages of reports count. The rooms have no clock. */
  asOf: PlainDate;
  impact: ImpactRequirement & Readonly<{ method: MethodId }>;
}>;

/** A derived figure beside which a finding can stand. */
export type CheckedFigure = "infill mass" | "infill depth" | "price";

/** What a rule says of a bid, before it is named and ordered. */
export type Found = Readonly<{
  severity: Severity;
  /** Ids of the claims it speaks of, in any order. Empty where it speaks of the infill or the prices as a whole. */
  claims: readonly string[];
  /** Ids of the price lines it speaks of. */
  priceLines?: readonly string[];
  /**
   * What tells it from the rule's other findings in this bid, in letters, digits and hyphens; by default the claims and
   * price lines. For a finding that gathers many claims, so that its answers stay with it when one more joins them.
   */
  keyedBy?: readonly string[];
  /** Derived figures that it speaks of, so that it can stand beside them. */
  figures?: readonly CheckedFigure[];
  /** Those of the claims that state more than the rest of the bid supports. */
  overClaims?: readonly string[];
  /** Asked when somebody reads the finding: that it is there is wanted of every bid, its words of few. */
  told: () => Told;
}>;

/** A finding in words. */
type Told = Readonly<{
  /** What was found, in one or two plain sentences. */
  sentence: Phrase;
  /** A neutral question to the bidder, ready to send. */
  question: Phrase;
  working: Working;
}>;

/** What a rule says of one bid. */
type Check = (bid: CheckedBid) => readonly Found[];

/**
 * One rule that holds a bid against itself, or against the other bids of the project. It says nothing where an input is
 * missing: what is missing is asked for elsewhere.
 */
export type Rule = Readonly<{
  id: string;
  /** What is the matter when it fires, as a heading. */
  title: string;
  /** What it holds against what, in a plain noun phrase. */
  holds: string;
  /** How far figures may differ before it fires, and who says so. */
  tolerance: string;
}> &
  (
    | Readonly<{ check: Check }>
    /** For a rule that holds bids against each other: `bids` are all that were handed in, the checked one among them or not. */
    | Readonly<{ among: (bids: readonly CheckedBid[]) => Check }>
  );

/** What a rule found in a bid, as plain data. */
export type Finding = Readonly<{
  /** Stays the same while rule and claims do, whatever their order: answers are kept by it. */
  key: string;
  rule: string;
  title: string;
  severity: Severity;
  claims: readonly string[];
  priceLines: readonly string[];
  figures: readonly CheckedFigure[];
  overClaims: readonly string[];
}> &
  Told;
