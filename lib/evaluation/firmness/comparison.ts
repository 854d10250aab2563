import {
  type BidScore,
  type Criterion,
  type CriterionScore,
  type CurvePoint,
  discountedValue,
  placingValue,
  valueCurve,
} from "#lib/criteria";
import type { Comparison, CriterionValue, KnownBids } from "#lib/robustness";
import type { Distribution } from "#lib/sampling";
import type { Evaluation } from "../model";

/** The scores of a bid that carry weight, in the order of the criteria. */
export const weighingScores = ({ criteria }: BidScore): readonly CriterionScore[] =>
  criteria.filter(({ share }) => share > 0);

/** The criteria that carry weight, in their order. */
export const weighingCriteria = ({ bids }: Evaluation): readonly Criterion[] => {
  const [first] = bids;
  return first === undefined ? [] : weighingScores(first.score).map(({ criterion }) => criterion);
};

/** The owner's weights of those criteria; together 1, none where nothing weighs. */
export const weighingShares = ({ bids }: Evaluation): readonly number[] => {
  const [first] = bids;
  return first === undefined ? [] : weighingScores(first.score).map(({ share }) => share);
};

/**
 * One value, a value as it follows from a figure that scatters, or anything between two values where no figure counts
 * or the figure is open on a side.
 */
function valueOn({ criterion, value, spread, counted }: CriterionScore): CriterionValue {
  const { valueFunction } = criterion;
  if (value === null || valueFunction.kind === "none")
    throw new RangeError("a criterion that carries weight has a value function");
  const { low, high } = value;
  if (low === high) return { kind: "known", value: low };
  const corners = valueCurve(valueFunction);
  if (spread === null || isEvenThroughout(spread, corners)) return { kind: "between", low, high };
  const curve =
    counted === "at a discount"
      ? corners.map((corner) => ({ ...corner, value: discountedValue(criterion, corner.value) }))
      : corners;
  return { kind: "drawn", distribution: spread, curve, low, high };
}

/** Figures alike over a piece without a corner are values alike between its ends. */
const isEvenThroughout = (spread: Distribution, corners: readonly CurvePoint[]): boolean =>
  spread.kind === "uniform" && corners.every(({ figure }) => figure <= spread.low || spread.high <= figure);

/**
 * The bids as plain values and weights, for the questions of how firm their order is. Bids that fail a gate are out. A
 * figure that is missing, or proven by too little, stands between what its worst and its best would be worth.
 * @returns null where no criterion carries weight: nothing is compared then
 */
export function comparisonOf(evaluation: Evaluation): Comparison | null {
  const criteria = weighingCriteria(evaluation);
  if (criteria.length === 0) return null;
  return {
    criteria: criteria.map(({ id }) => id),
    shares: weighingShares(evaluation),
    bids: evaluation.bids.map(({ id, score }) => ({
      bid: id,
      standing: score.standing === "fails a gate" ? "out" : "in",
      values: weighingScores(score).map(valueOn),
    })),
  };
}

/** The bids that fail no gate by the values that give them their places: as shown, or at worst where nothing is shown. */
export const placedBids = ({ bids }: Evaluation): KnownBids =>
  bids
    .filter(({ score }) => score.standing !== "fails a gate")
    .map(({ id, score }) => ({ bid: id, values: weighingScores(score).map(placingValue) }));
