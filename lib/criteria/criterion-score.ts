import { type Figure, intervalOfFigure, type Shortfall } from "#lib/figure";
import type { Span } from "./gate";
import { gateDecision } from "./gates";
import type { Criterion, CriterionScore, ScoreInterval, ShownFigure, StatusWord } from "./model";
import { valueAt, valueBounds } from "./value-functions";

const anything: Span = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };
const nothing: ScoreInterval = { low: 0, likely: 0, high: 0 };

/** A figure that counts, or the reason why none does. */
type Admitted = Readonly<{ kind: "counts"; span: Span; likely: number } | { kind: "short"; because: Shortfall }>;

/** What a figure decides, before weighing. */
type Judgement = Pick<CriterionScore, "status" | "gate" | "value" | "because">;

/** The number to reckon with where one is needed: the middle of a range, the bound of a one-sided figure. */
export function likelyFigure(figure: Exclude<Figure, { kind: "unknown" }>): number {
  switch (figure.kind) {
    case "known":
      return figure.value;
    case "range":
      return (figure.low + figure.high) / 2;
    case "at-least":
      return figure.low;
    case "at-most":
      return figure.high;
  }
}

function admitted({ measure, evidence }: Criterion, shown: ShownFigure | undefined): Admitted {
  if (shown === undefined) return { kind: "short", because: { kind: "not-claimed", what: measure.label } };
  const { figure } = shown;
  if (figure.dimension !== measure.dimension) {
    throw new RangeError(`${measure.id} is judged by ${measure.dimension}, got a figure of ${figure.dimension}`);
  }
  if (figure.kind === "unknown") return { kind: "short", because: figure.because };
  if (shown.evidence.rank < evidence.least.rank) {
    const { label: wanted } = evidence.least;
    return {
      kind: "short",
      because: { kind: "weak-evidence", what: measure.label, wanted, got: shown.evidence.label },
    };
  }
  return { kind: "counts", span: intervalOfFigure(figure) ?? anything, likely: likelyFigure(figure) };
}

const gateWords = { meets: "meets", "falls-short": "falls short", "not-decided": "not decided" } as const;

/** Without a gate a figure meets the criterion where it is sure to score something. */
function wordByValue(value: ScoreInterval | null): StatusWord {
  if (value === null || value.low > 0) return "meets";
  return value.high > 0 ? "not decided" : "falls short";
}

function judgedOnFigure({ gate, valueFunction }: Criterion, span: Span, likely: number): Judgement {
  const value =
    valueFunction.kind === "none"
      ? null
      : { ...valueBounds(valueFunction, span), likely: valueAt(valueFunction, likely) };
  if (gate.kind === "none") return { status: wordByValue(value), gate: { kind: "no-gate" }, value, because: null };
  const outcome = gateDecision(gate, span);
  return { status: gateWords[outcome.kind], gate: outcome, value, because: null };
}

function judgedWithoutFigure({ gate, valueFunction, evidence }: Criterion, because: Shortfall): Judgement {
  const status = because.kind === "not-comparable" ? "not comparable" : "not shown";
  const countsAsWorst = evidence.shortfall === "counts-as-worst";
  const outcome = { kind: countsAsWorst ? "falls-short-on-evidence" : "not-shown", because } as const;
  const bounds = valueFunction.kind === "none" ? null : valueBounds(valueFunction, anything);
  return {
    status,
    gate: gate.kind === "none" ? { kind: "no-gate" } : outcome,
    value:
      bounds && (countsAsWorst ? { ...bounds, likely: bounds.low, high: bounds.low } : { ...bounds, likely: null }),
    because,
  };
}

/**
 * How one bid's figure does on one criterion. `shown` is undefined where the bid says nothing.
 * @param share the criterion's part of all weights, 0 to 1
 * @throws RangeError if the figure is of another dimension than the measure: the caller matched the two up amiss
 */
export function criterionScore(criterion: Criterion, share: number, shown: ShownFigure | undefined): CriterionScore {
  const figure = admitted(criterion, shown);
  const judgement =
    figure.kind === "counts"
      ? judgedOnFigure(criterion, figure.span, figure.likely)
      : judgedWithoutFigure(criterion, figure.because);
  const { low, likely, high } = judgement.value ?? nothing;
  const contribution = { low: share * low, likely: likely === null ? null : share * likely, high: share * high };
  return { criterion, ...judgement, share, contribution };
}
