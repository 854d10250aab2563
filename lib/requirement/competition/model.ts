import type { GateRule, Span } from "#lib/criteria";
import type { DimensionName } from "#lib/quantity";

/** A clause as the competition check sees it: a limit, or null where it asks for something in words. */
export type LimitClause = Readonly<{ id: string; label: string; dimension: DimensionName; limit: GateRule | null }>;

/** What is known of a system on one clause: a figure between two ends in SI, or whether it does what the words ask. */
export type SystemFigure = Readonly<{ kind: "figure"; span: Span } | { kind: "answer"; meets: boolean }>;

/** A system known to the project: a bid, an earlier bid, or one the owner entered from public data. */
export type KnownSystem = Readonly<{ id: string; label: string; figures: Readonly<Record<string, SystemFigure>> }>;

/** One end of a limit moved. `past` is true where the limit has to go beyond `to`, because a figure at it does not pass. */
export type LimitMove = Readonly<{
  clause: string;
  end: "low" | "high";
  from: number;
  to: number;
  past: boolean;
  /** The move as a share of the limit, so that moves of unlike clauses can be held against each other. */
  share: number;
}>;

/**
 * How a system stands at a clause. `relaxation` is the smallest move of the limit with which it meets for sure; null
 * where the clause is in words.
 */
export type Standing = Readonly<
  | { kind: "meets" }
  | { kind: "fails"; relaxation: LimitMove | null }
  | { kind: "not-known"; relaxation: LimitMove | null }
>;

/** Rows are clauses, columns systems, both in the order handed in. */
export type StandingMatrix = readonly (readonly Standing[])[];
