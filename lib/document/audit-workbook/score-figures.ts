import {
  type Counted,
  type Criterion,
  type CriterionScore,
  type RatingLevel,
  ratingMeasure,
  scoredSpan,
} from "#lib/criteria";
import { type BidEvaluation, derivedMeasures, measuredFigure, type Project } from "#lib/evaluation";
import { explainShortfall, type Figure, intervalOfFigure } from "#lib/figure";
import { type DimensionName, type ExactQuantity, inUnit, measured, type UnitOf, unitFor } from "#lib/quantity";
import type { TotalKey } from "./totals-sheet";

/** A figure that a criterion judges, in the unit that the owner wrote the anchors in; null for an open side. */
export type JudgedFigure = Readonly<{
  from: Readonly<
    | { kind: "typed"; low: number | null; high: number | null }
    | { kind: "total"; total: TotalKey; factor: number }
    | { kind: "unknown" }
  >;
  /** Whether it counts, as the app has it. */
  counts: Counted;
  source: string;
  because: string;
}>;

/** Figures that come from the costs, and the total that each is. */
const totals: Readonly<Record<string, Readonly<{ total: TotalKey; unit: string }>>> = {
  "present-value": { total: "presentValue", unit: "$" },
  "price-at-base-date": { total: "priceAtBaseDate", unit: "$" },
  "equivalent-annual-cost": { total: "equivalentAnnualCost", unit: "$" },
  "annual-cost-per-area": { total: "perSquareMetre", unit: "$/m²" },
  "cost-per-hour": { total: "perHour", unit: "$/h" },
};

/** Unit conversion leaves last bits that differ; at thirteen digits two spellings of one length are one number. */
const thirteenDigits = (number: number): number => Number(number.toPrecision(13));

/** An SI figure in the unit of a criterion. */
export const inCriterionUnit = ({ measure: { dimension } }: Criterion, si: number, unit: string): number =>
  thirteenDigits(numberIn(dimension, si, unit));

/** The unit in which the owner wrote the first anchor, or else the usual one. */
export function unitOfCriterion({ measure: { dimension }, valueFunction, gate }: Criterion): string {
  const written = [
    ...anchorsOf(valueFunction),
    ...(gate.kind === "none" ? [] : gate.kind === "within" ? [gate.low] : [gate.limit]),
  ];
  const [first] = written;
  if (first === undefined || first.unit.startsWith("cent")) return unitFor(dimension, "us");
  return first.unit;
}

/** A level of a rating beside the figure that it stands for. */
const ratingFigure = ({ label, value }: RatingLevel): ExactQuantity => ({
  ...{ asEntered: label, dimension: "fraction", unit: "%" },
  value: measured("fraction", value),
});

/** The figures of a value function in their order. */
export function anchorsOf(rule: Criterion["valueFunction"]): readonly ExactQuantity[] {
  switch (rule.kind) {
    case "none":
      return [];
    case "more-is-better":
    case "less-is-better":
      return [rule.worst, rule.best];
    case "target-window":
      return [rule.nothingBelow, rule.fullFrom, rule.fullTo, rule.nothingAbove];
    case "steps":
      return rule.steps.map(({ at }) => at);
    case "piecewise":
      return rule.knots.map(({ at }) => at);
    case "rating":
      return rule.levels.map(ratingFigure);
  }
}

export function judgedFigure(
  project: Project,
  area: Figure<"area">,
  evaluated: BidEvaluation,
  score: CriterionScore,
): JudgedFigure {
  const { criterion, because, counted: counts } = score;
  const { dimension, id, note } = criterion.measure;
  const unit = unitOfCriterion(criterion);
  const bid = project.bids.find((one) => one.id === evaluated.id);
  const shown = bid === undefined ? null : measuredFigure({ bid, area, ...evaluated }, criterion);
  const why = because === null ? "" : explainShortfall(because);
  const total = totals[id];
  if (total !== undefined) {
    const factor = thirteenDigits(numberIn(dimension, siOf(dimension, 1, total.unit), unit));
    return { from: { kind: "total", total: total.total, factor }, counts, source: "The sheet “Totals”", because: why };
  }
  const interval = shown === null ? null : scoredSpan(shown.figure, score.spread);
  const evidence = shown === null ? "" : `shown by: ${shown.evidence}`;
  if (id === ratingMeasure.id) return { ...ratedCells(criterion, shown?.figure ?? null), counts, because: why };
  const source = [isDerived(id) ? "Worked out by the app" : "Claim of the bid", evidence, note]
    .filter((text) => text !== "")
    .join("; ");
  return { from: typedCells(criterion, interval), counts, source, because: why };
}

/** The ends of a figure in the unit of its criterion. */
function typedCells(
  criterion: Criterion,
  interval: Readonly<{ low: number; high: number }> | null,
): JudgedFigure["from"] {
  if (interval === null) return { kind: "unknown" };
  const unit = unitOfCriterion(criterion);
  const end = (si: number) => (Number.isFinite(si) ? inCriterionUnit(criterion, si, unit) : null);
  return { kind: "typed", low: end(interval.low), high: end(interval.high) };
}

/** What the committee made of it, with the words of its working: the ratings, and the reason for the agreed value. */
function ratedCells(criterion: Criterion, figure: Figure | null): Pick<JudgedFigure, "from" | "source"> {
  const interval = figure === null ? null : intervalOfFigure(figure);
  if (figure === null || figure.kind === "unknown") return { from: { kind: "unknown" }, source: "The committee" };
  const { formula, inputs, assumptions } = figure.working;
  const ratings = inputs.map(({ label, text }) => `${label}: ${text}`);
  return {
    from: typedCells(criterion, interval),
    source: [`The committee, ${formula}`, ...ratings, ...assumptions].join("; "),
  };
}

const derived = new Set<string>(derivedMeasures.map(({ id }) => id));
const isDerived = (id: string): boolean => derived.has(id);

const numberIn = <D extends DimensionName>(dimension: D, si: number, unit: string): number =>
  inUnit(dimension, measured(dimension, si), unit as UnitOf<D>);
const siOf = <D extends DimensionName>(dimension: D, number: number, unit: string): number =>
  measured(dimension, number, unit as UnitOf<D>);
