import type { Figure, Shortfall } from "#lib/figure";
import type { CurrencyCode, DimensionName } from "#lib/quantity";
import type { Distribution } from "#lib/sampling";
import type { GateRule } from "./gates";
import type { ShortfallRule } from "./shortfall-rules";
import type { ScoreRule } from "./value-functions";

/**
 * Anything a criterion can judge. The list of them is handed in by whoever knows the claims and derived figures. Where the
 * project is known, money has its currency.
 */
export type Measure = Readonly<{
  id: string;
  label: string;
  dimension: DimensionName;
  note: string;
  currency?: CurrencyCode;
}>;

/** How well a figure is proven. A higher rank is stronger; `label` is what people read. */
export type EvidenceLevel = Readonly<{ level: string; label: string; rank: number }>;

/**
 * The weakest evidence that counts, and what happens below it. `discount` is the part of its value, 0 to 1, that a figure
 * loses which is shown by less than asked for; 0 under every rule but that one.
 */
export type EvidenceRule = Readonly<{ least: EvidenceLevel; shortfall: ShortfallRule; discount: number }>;

/** Which bids a criterion asks something of: all, or those whose figure for another measure keeps to a condition. */
export type AskedOf = Readonly<{ kind: "every-bid" } | { kind: "bids-where"; measure: Measure; is: GateRule }>;

/** One thing the owner judges bids by. A criterion gates, scores, or does both. */
export type Criterion = Readonly<{
  id: string;
  measure: Measure;
  label: string;
  /** Why the owner asks, in plain words. */
  reason: string;
  /** Where limit and anchors come from, as the owner wrote it; empty where nobody says. */
  source: string;
  askedOf: AskedOf;
  /** Id of the heading that it is weighed under; empty where it stands by itself. */
  heading: string;
  gate: Readonly<{ kind: "none" }> | GateRule;
  valueFunction: Readonly<{ kind: "none" }> | ScoreRule;
  /** Points, 0 or more: the worth of moving from the worst anchor to the best one. Only proportions matter. */
  weight: number;
  evidence: EvidenceRule;
}>;

/** What a bid shows for one criterion. */
export type ShownFigure = Readonly<{
  figure: Figure;
  evidence: EvidenceLevel;
  /** How the figure scatters where the bid says more than its ends. */
  spread?: Distribution | null;
  /** The figure that decides whether the criterion is asked of this bid. */
  asked?: Figure;
}>;

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
  | { kind: "not-asked" }
  | { kind: "meets"; margin: number }
  | { kind: "falls-short"; margin: number }
  | { kind: "falls-short-on-evidence"; because: Shortfall }
  | { kind: "not-decided" }
  | { kind: "not-shown"; because: Shortfall }
>;

export type StatusWord = "meets" | "falls short" | "not shown" | "not comparable" | "not decided" | "not asked";

/** Whether a figure counts: as it stands, with a part of its value taken off, or not at all. */
export type Counted = "in full" | "at a discount" | "not";

/** How one bid does on one criterion. */
export type CriterionScore = Readonly<{
  criterion: Criterion;
  status: StatusWord;
  gate: GateOutcome;
  /** 0 to 1 on the owner's anchors; null where the criterion only gates. */
  value: ScoreInterval | null;
  /** How the figure that counts may scatter; null for one number, one that is open on a side, and where none counts. */
  spread: Distribution | null;
  /** The criterion's part of all weights, 0 to 1; 0 where it only gates. */
  share: number;
  /** share × value. */
  contribution: ScoreInterval;
  /** Whether the criterion is asked of the bid. */
  asked: "yes" | "no" | "not decided";
  /** Whether the bid's figure counts where the criterion is asked of it. */
  counted: Counted;
  /** Why the figure does not count in full; null where it does, and where nothing is asked of the bid. */
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
