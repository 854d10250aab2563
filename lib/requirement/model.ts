import type { Condition, Edition, EvidenceLevel, MethodId, PropertyId } from "#lib/claim";
import type { Criterion, GateRule, Measure } from "#lib/criteria";
import type { ExactQuantity } from "#lib/quantity";

/** What a requirement is about: a measure that criteria judge too, with the claimed property and method behind it where there is one. */
export type RequirementSubject = Measure & Readonly<{ property?: PropertyId; method?: MethodId | null }>;

/** Where a limit holds: at each point, for the average, or for the whole as one figure. */
export type HoldsAt = "each-point" | "average" | "whole" | "not-stated";

/** What a bidder or the contractor hands in, by the article of Part 1 in which it is asked for. */
export const submittalKinds = {
  "product-data": { label: "Product data", article: "action" },
  "shop-drawing": { label: "Shop drawings", article: "action" },
  sample: { label: "Samples", article: "action" },
  "test-report": { label: "Test reports", article: "informational" },
  certificate: { label: "Certificates", article: "informational" },
  "weigh-ticket": { label: "Weigh tickets", article: "informational" },
  "warranty-form": { label: "Warranty form", article: "closeout" },
  "maintenance-manual": { label: "Maintenance manual", article: "closeout" },
} as const;

export type SubmittalKind = keyof typeof submittalKinds;

/** Articles in which a clause that asks in words can stand; a clause on a measure stands where the measure belongs. */
export const clausePlaces = {
  performance: "Performance requirements",
  materials: "Materials",
  quality: "Quality assurance",
  warranty: "Warranty",
  maintenance: "Maintenance",
} as const;

export type ClausePlace = keyof typeof clausePlaces;

/** What a clause adds to a criterion, or says by itself. Empty text stands for what nobody has filled in. */
export type ClauseTerms = Readonly<{
  id: string;
  /** Whether the text holds the clause. */
  isOn: boolean;
  method: MethodId | null;
  edition: Edition;
  condition: Condition;
  holdsAt: HoldsAt;
  /** How far a reading may stray from the limit, as written. */
  tolerance: string;
  submittals: readonly SubmittalKind[];
  /** The test on the finished work, in words. */
  acceptance: string;
  /** Years between later tests; null where none is asked for. */
  yearsBetweenTests: number | null;
  remedy: string;
  limitSource: string;
}>;

/** A clause as the owner keeps it: beside a criterion, or for something that no criterion judges. */
export type Clause = ClauseTerms &
  Readonly<
    | { kind: "of-criterion"; criterion: string }
    | {
        kind: "own";
        label: string;
        reason: string;
        evidence: EvidenceLevel;
        /** Null where the clause asks for something in words only. */
        subject: RequirementSubject | null;
        limit: GateRule | null;
        /** What is asked, in words; empty where subject and limit say it. */
        asked: string;
        place: ClausePlace;
      }
  >;

/** Something the owner asks for beyond what clauses ask, with the clauses that use it. */
export type AskedSubmittal = Readonly<{ id: string; item: string; kind: SubmittalKind; usedBy: readonly string[] }>;

/** What a requirement does in the evaluation. */
export type Role = "gates" | "scores" | "gates and scores" | "none";

/**
 * One requirement of the specification, whichever side it was typed on. A criterion gives label, reason, subject, limit
 * and evidence; the clause beside it gives the rest.
 */
export type Requirement = Omit<ClauseTerms, "tolerance"> &
  Readonly<{
    tolerance: ExactQuantity | null;
    label: string;
    reason: string;
    subject: RequirementSubject | null;
    limit: GateRule | null;
    asked: string;
    place: ClausePlace;
    /** The weakest evidence that counts, as people read it. */
    evidence: string;
    /** Null where no criterion uses it. */
    criterion: Criterion | null;
    role: Role;
  }>;
