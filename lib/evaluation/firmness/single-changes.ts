import {
  type Criterion,
  type CriterionScore,
  discountedValue,
  gateDecision,
  likelyFigure,
  placingValue,
  type ScoreRule,
  valueAt,
  valueCurve,
} from "#lib/criteria";
import { intervalOfFigure } from "#lib/figure";
import { type KnownBids, type Lever, type LeverNeed, leverNeeds, valueAndWeightLevers } from "#lib/robustness";
import { measuredFigure } from "../evaluate";
import type { BidEvaluation, Evaluation, Project } from "../model";
import { placedBids, weighingCriteria, weighingScores, weighingShares } from "./comparison";
import { figurePerCent, isCostCriterion } from "./cost-criteria";

/** What is changed alone, everything else staying as it is. */
export type ChangedThing = Readonly<
  | {
      kind: "figure";
      criterion: Criterion;
      /** The figure that counts now, in SI; null where none does. */
      shown: number | null;
    }
  /** The price at the base date, in cents. */
  | { kind: "price"; cents: number }
  | { kind: "weight"; criterion: Criterion; share: number }
>;

/** One change alone, and how far it has to go until the bid is level with the best of the others. */
export type SingleChange = Readonly<{ changed: ChangedThing; need: LeverNeed }>;

type Offered = Readonly<{ changed: ChangedThing; lever: Lever }>;

/** A total is a sum over the criteria: moving one value moves it by share × the move. */
type Standing = Readonly<{ bid: BidEvaluation; leadNow: number }>;

const totalOf = (values: readonly number[], shares: readonly number[]): number =>
  values.reduce((sum, value, at) => sum + value * (shares[at] ?? 0), 0);

/**
 * The single changes of a figure, the price or a weight that would bring a bid level with the best of others, the
 * smallest part of the way first; then those that are not enough alone. Scores are worked out anew by the owner's own
 * value functions and gates, so that steps, windows and shoulders count as they are.
 * @param rivals ids of the bids to draw level with; those that fail a gate are passed over
 * @throws RangeError if the bid is not among those that fail no gate
 */
export function singleChanges(
  project: Project,
  evaluation: Evaluation,
  bid: string,
  rivals: readonly string[],
): readonly SingleChange[] {
  const shares = weighingShares(evaluation);
  const compared: KnownBids = placedBids(evaluation).filter((one) => one.bid === bid || rivals.includes(one.bid));
  const mine = compared.find((one) => one.bid === bid);
  const evaluated = evaluation.bids.find(({ id }) => id === bid);
  if (mine === undefined || evaluated === undefined) throw new RangeError(`no bid ${bid} in this comparison`);
  const others = compared.filter((one) => one !== mine).map(({ values }) => totalOf(values, shares));
  const standing: Standing = { bid: evaluated, leadNow: totalOf(mine.values, shares) - Math.max(...others) };
  const offered = [
    ...figureChanges(project, evaluation, standing),
    ...priceChange(project, evaluation, standing),
    ...weightChanges(evaluation, compared, bid),
  ];
  return leverNeeds(offered.map(({ lever }) => lever)).flatMap((need) =>
    offered.filter(({ lever }) => lever === need.lever).map(({ changed }) => ({ changed, need })),
  );
}

/** What a figure would be worth: one shown by less than asked for stays so, whatever it is. */
const worthAt = ({ criterion, counted }: CriterionScore, rule: ScoreRule, figure: number): number => {
  const value = valueAt(rule, figure);
  return counted === "at a discount" ? discountedValue(criterion, value) : value;
};

/** The figure that a score rests on, in SI; null where none counts. */
function shownFigure(project: Project, { area }: Evaluation, bid: BidEvaluation, score: CriterionScore): number | null {
  const entered = project.bids.find(({ id }) => id === bid.id);
  if (score.counted === "not" || score.asked !== "yes" || entered === undefined) return null;
  const { figure } = measuredFigure({ ...bid, bid: entered, area }, score.criterion);
  return figure.kind === "unknown" ? null : likelyFigure(figure);
}

/** Just past a corner: a step may belong to the figure before it. */
const past = (figure: number, direction: 1 | -1): number =>
  figure + direction * 1e-9 * Math.max(1e-6, Math.abs(figure));

/** The corners of a value function that are met on the way from a figure, in the order in which they are met. */
const cornersFrom = (rule: ScoreRule, from: number, direction: 1 | -1): readonly number[] =>
  valueCurve(rule)
    .flatMap(({ figure }) => [figure, past(figure, direction)])
    .filter((figure) => direction * (figure - from) > 0)
    .toSorted((one, other) => direction * (one - other));

/** The best so far on the way: it only rises, so that the first figure that is enough is found whatever lies beyond it. */
const bestSoFar =
  (lead: (at: number) => number, from: number, corners: readonly number[], direction: 1 | -1) =>
  (at: number): number =>
    Math.max(lead(from), lead(at), ...corners.filter((corner) => direction * (at - corner) >= 0).map(lead));

/** A lever along a way with corners, up to the first corner where the lead is largest; null where it never rises. */
function leverAlong(
  head: Pick<Lever, "id" | "label" | "kind">,
  from: number,
  direction: 1 | -1,
  corners: readonly number[],
  lead: (at: number) => number,
): Lever | null {
  const most = Math.max(...corners.map(lead));
  const furthest = corners.find((corner) => lead(corner) >= most - 1e-12);
  if (furthest === undefined || !(most > lead(from))) return null;
  return { ...head, from, furthest, leadAt: bestSoFar(lead, from, corners, direction) };
}

/** A figure that would fail its own gate helps nobody. */
const passesGate = ({ gate }: Criterion, figure: number): boolean =>
  gate.kind === "none" || gateDecision(gate, { low: figure, high: figure }).kind === "meets";

function figureChanges(project: Project, evaluation: Evaluation, { bid, leadNow }: Standing): readonly Offered[] {
  return weighingScores(bid.score).flatMap((score) => {
    const { criterion, share } = score;
    const { id, label, valueFunction } = criterion;
    const shown = shownFigure(project, evaluation, bid, score);
    // money is moved by the price, not figure by figure
    if (valueFunction.kind === "none" || (isCostCriterion(criterion) && shown !== null) || score.asked === "no")
      return [];
    const now = placingValue(score);
    const lead = (at: number) =>
      passesGate(criterion, at)
        ? leadNow + share * (worthAt(score, valueFunction, at) - now)
        : Number.NEGATIVE_INFINITY;
    const figures = valueCurve(valueFunction).map(({ figure }) => figure);
    return ([1, -1] as const).flatMap((direction): readonly Offered[] => {
      const end = direction === 1 ? Math.min(...figures) : Math.max(...figures);
      const from = shown ?? end;
      const head = { id: `figure/${id}/${direction}`, label, kind: "claim" } as const;
      const lever = leverAlong(head, from, direction, cornersFrom(valueFunction, from, direction), lead);
      return lever === null ? [] : [{ changed: { kind: "figure", criterion, shown }, lever }];
    });
  });
}

function priceChange(project: Project, evaluation: Evaluation, { bid, leadNow }: Standing): readonly Offered[] {
  const price = intervalOfFigure(bid.cost.priceAtBaseDate)?.low;
  const judged = weighingScores(bid.score).flatMap((score) => {
    const { criterion, share } = score;
    const [shown, perCent] = [shownFigure(project, evaluation, bid, score), figurePerCent(bid, criterion)];
    if (!isCostCriterion(criterion) || criterion.valueFunction.kind === "none" || shown === null || perCent === null)
      return [];
    return [{ criterion, rule: criterion.valueFunction, share, shown, perCent, now: placingValue(score) }];
  });
  if (price === undefined || !(price > 0) || judged.length === 0) return [];
  const lead = (at: number): number =>
    judged.reduce((sum, { criterion, rule, share, shown, perCent, now }) => {
      const figure = shown - perCent * (price - at);
      return passesGate(criterion, figure) ? sum + share * (valueAt(rule, figure) - now) : Number.NEGATIVE_INFINITY;
    }, leadNow);
  const corners = judged
    .flatMap(({ rule, shown, perCent }) =>
      cornersFrom(rule, shown, -1).map((figure) => price - (shown - figure) / perCent),
    )
    .filter((at) => at > 0)
    .concat(0)
    .toSorted((one, other) => other - one);
  const head = { id: "price", label: "Price at the base date", kind: "price" } as const;
  const lever = leverAlong(head, price, -1, corners, lead);
  return lever === null ? [] : [{ changed: { kind: "price", cents: price }, lever }];
}

function weightChanges(evaluation: Evaluation, compared: KnownBids, bid: string): readonly Offered[] {
  const [criteria, shares] = [weighingCriteria(evaluation), weighingShares(evaluation)];
  return valueAndWeightLevers(compared, shares, criteria, bid)
    .filter(({ kind }) => kind === "weight")
    .flatMap((lever) =>
      criteria
        .filter(({ id }) => lever.id === `weight/${id}`)
        .map((criterion) => ({ changed: { kind: "weight", criterion, share: lever.from }, lever })),
    );
}
