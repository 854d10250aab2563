import type { Figure, Shortfall } from "#lib/figure";
import type { DimensionName } from "#lib/quantity";
import type { GateRule } from "./gates";
import type { ScoreRule } from "./value-functions";

/** Anything a criterion can judge. The list of them is handed in by whoever knows the claims and derived figures. */
export type Measure = Readonly<{ id: string; label: string; dimension: DimensionName; note: string }>;

/** How well a figure is proven. A higher rank is stronger; `label` is what people read. */
export type EvidenceLevel = Readonly<{ level: string; label: string; rank: number }>;

/**
 * What becomes of a figure that is missing, not comparable, or proven by less than the owner asked for.
 * `keep-open`: it may be anything from worst to best. `counts-as-worst`: it scores its worst and does not pass a gate.
 * `ask-first`: as keep-open, and the criterion is listed among those to ask the bidder about before a decision.
 */
export type ShortfallRule = "keep-open" | "counts-as-worst" | "ask-first";

/** The weakest evidence that counts, and what happens below it. */
export type EvidenceRule = Readonly<{ least: EvidenceLevel; shortfall: ShortfallRule }>;

/** One thing the owner judges bids by. A criterion gates, scores, or does both. */
export type Criterion = Readonly<{
  id: string;
  measure: Measure;
  label: string;
  /** Why the owner asks, in plain words. */
  reason: string;
  gate: Readonly<{ kind: "none" }> | GateRule;
  valueFunction: Readonly<{ kind: "none" }> | ScoreRule;
  /** Points, 0 or more: the worth of moving from the worst anchor to the best one. Only proportions matter. */
  weight: number;
  evidence: EvidenceRule;
}>;

/** What a bid shows for one criterion. */
export type ShownFigure = Readonly<{ figure: Figure; evidence: EvidenceLevel }>;

/** One bid's figures by criterion id. A criterion without an entry is one the bid says nothing about. */
export type BidFigures = Readonly<{ bid: string; shown: Readonly<Record<string, ShownFigure>> }>;

/**
 * A score between bounds. `likely` is the score at the figure as stated (the middle of a range, the bound of a
 * one-sided figure) and null where no figure counts.
 */
export type ScoreInterval = Readonly<{ low: number; likely: number | null; high: number }>;

/**
 * How a figure stands at a gate. `margin` is in SI and signed: by at least so much it is inside the limit, or (negative)
 * outside it.
 */
export type GateOutcome = Readonly<
  | { kind: "no-gate" }
  | { kind: "meets"; margin: number }
  | { kind: "falls-short"; margin: number }
  | { kind: "falls-short-on-evidence"; because: Shortfall }
  | { kind: "not-decided" }
  | { kind: "not-shown"; because: Shortfall }
>;

export type StatusWord = "meets" | "falls short" | "not shown" | "not comparable" | "not decided";

/** How one bid does on one criterion. */
export type CriterionScore = Readonly<{
  criterion: Criterion;
  status: StatusWord;
  gate: GateOutcome;
  /** 0 to 1 on the owner's anchors; null where the criterion only gates. */
  value: ScoreInterval | null;
  /** The criterion's part of all weights, 0 to 1; 0 where it only gates. */
  share: number;
  /** share × value. */
  contribution: ScoreInterval;
  /** Why no figure counts; null where one does. */
  because: Shortfall | null;
}>;

export type Standing = "passes all gates" | "fails a gate" | "gate open";

/** How one bid does on all criteria. */
export type BidScore = Readonly<{
  bid: string;
  standing: Standing;
  criteria: readonly CriterionScore[];
  /** 0 to 1; null where no criterion carries weight, so there is nothing to add up. */
  total: ScoreInterval | null;
  /** The part of all weights that rests on comparable figures with the evidence asked for, 0 to 1. */
  coverage: number;
  /** Ids of criteria the owner wants asked about before deciding. */
  askFirst: readonly string[];
}>;
