import { type Criterion, placingValue } from "#lib/criteria";
import type { BidEvaluation } from "../model";
import { weighingScores } from "./comparison";

/** How two bids compare on one criterion. */
export type ComparedOn = Readonly<{
  criterion: Criterion;
  /** Part of all weights by which the first is ahead (negative: behind) on what is shown: share × difference of values. */
  lead: number;
  /** What that lead may be at least and at most while figures are open. */
  least: number;
  most: number;
}>;

/** Two bids held against each other: criterion by criterion, and in all. */
export type HeldAgainst = Readonly<{
  /** Where the first is ahead, the largest lead first; where it is behind, likewise; and where the two are level. */
  ahead: readonly ComparedOn[];
  behind: readonly ComparedOn[];
  level: readonly ComparedOn[];
  /** Sum of all leads: the difference of the two totals, 0 to 1. */
  lead: number;
}>;

/** Values closer than this are one value: they differ by rounding only. */
const sameValue = 1e-12;

/** Holds one bid against another on every criterion that carries weight, on what each shows (at worst where nothing is shown). */
export function heldAgainst(one: BidEvaluation, other: BidEvaluation): HeldAgainst {
  const rivals = new Map(weighingScores(other.score).map((score) => [score.criterion.id, score]));
  const all = weighingScores(one.score).map((score): ComparedOn => {
    const { criterion, share, value } = score;
    const rival = rivals.get(criterion.id);
    const by = (mine: number, theirs: number) => share * (mine - theirs);
    return {
      criterion,
      lead: by(placingValue(score), placingValue(rival)),
      least: by(value?.low ?? 0, rival?.value?.high ?? 0),
      most: by(value?.high ?? 0, rival?.value?.low ?? 0),
    };
  });
  return {
    ahead: all.filter(({ lead }) => lead > sameValue).toSorted((a, b) => b.lead - a.lead),
    behind: all.filter(({ lead }) => lead < -sameValue).toSorted((a, b) => a.lead - b.lead),
    level: all.filter(({ lead }) => Math.abs(lead) <= sameValue),
    lead: all.reduce((sum, { lead }) => sum + lead, 0),
  };
}
