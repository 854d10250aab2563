import { type Criterion, placingTotal } from "#lib/criteria";
import { type CostAnchors, type MethodCheck, methodCheck } from "#lib/robustness";
import type { Evaluation } from "../model";
import { weighingScores } from "./comparison";
import { figurePerCent, isCostCriterion } from "./cost-criteria";
import { valueForMoney } from "./value-for-money";

/**
 * Who leads by other ways to decide than the owner's score: lowest levelled cost, lowest cost per point, most points
 * whatever the cost, and points weighed with price where the owner's own anchors for cost say how.
 * @returns null where nothing but cost carries weight, so that there are no points to set beside it
 */
export function methodsOf(evaluation: Evaluation): MethodCheck | null {
  const valued = valueForMoney(evaluation);
  if (valued.length === 0) return null;
  const scores = new Map(evaluation.bids.map(({ id, score }) => [id, placingTotal(score)] as const));
  const bids = valued.map(({ bid, points, cost, efficient }) => ({
    ...{ bid, points, cents: cost.kind === "not-known" ? null : cost.cents },
    standing: efficient === "out" ? ("out" as const) : ("in" as const),
  }));
  return methodCheck(bids, scores, anchorsOf(evaluation));
}

/** The anchors of the one criterion of cost, as present value, weighed half and half with all else. */
function anchorsOf({ bids }: Evaluation): CostAnchors | null {
  for (const bid of bids) {
    const judged = weighingScores(bid.score).filter(({ criterion }) => isCostCriterion(criterion));
    const anchors = judged.flatMap(({ criterion }) => endsOf(criterion, figurePerCent(bid, criterion)));
    const [only, ...more] = anchors;
    if (only !== undefined && more.length === 0) return { ...only, share: evenShare };
  }
  return null;
}

/** What price weighs where it is set beside everything else. @source common practice, no source */
const evenShare = 0.5;

const endsOf = ({ measure, valueFunction }: Criterion, perCent: number | null) =>
  valueFunction.kind !== "less-is-better" || perCent === null || measure.id === "price-at-base-date"
    ? []
    : [{ bestCents: valueFunction.best.value / perCent, worstCents: valueFunction.worst.value / perCent }];
